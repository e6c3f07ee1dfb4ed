/** The element line that is looked at, by the plan angle of its normal: the same in every drawing of the part. [degrees] */
class Chosen {
  planDeg: number | undefined = $state(undefined);
  /** Lines at nought and at a whole turn are the two edges of one seam. */
  is(planDeg: number): boolean {
    return this.planDeg !== undefined && Math.abs(planDeg - this.planDeg) < 1e-6;
  }
}
export const chosen = new Chosen();
