/** The element line that is looked at in every drawing of the part, as an index into the report's `hand.rows`. */
class Chosen {
  element: number | undefined = $state(undefined);
  isAmong(elements: readonly number[] | undefined): boolean {
    return this.element !== undefined && elements !== undefined && elements.includes(this.element);
  }
}
export const chosen = new Chosen();
