/** Why a part cannot be laid out, told so that the person at the drawing can mend it. */
export interface Refusal {
  /** The field of the part file to change, as a path. */
  readonly path: readonly (string | number)[];
  readonly problem: string;
  readonly remedy: string;
  /** Another way out, told beside a number that was tried and goes. */
  readonly otherwise?: string;
}
