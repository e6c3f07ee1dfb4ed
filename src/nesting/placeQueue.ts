/** A place where a blank may lie, if it turns out to be free. [mm] */
export interface Place {
  readonly x: number;
  readonly y: number;
  /** The less, the better liked. */
  readonly cost: number;
  /** It is clear of so many of the blanks that lie there. */
  heeded: number;
}

const comesFirst = (p: Place, q: Place): boolean =>
  p.cost !== q.cost ? p.cost < q.cost : p.y !== q.y ? p.y < q.y : p.x < q.x;

/** Places in the order in which they are liked: a binary heap. */
export class PlaceQueue {
  private readonly heap: Place[] = [];

  first(): Place | undefined {
    return this.heap[0];
  }

  add(place: Place): void {
    const { heap } = this;
    let at = heap.push(place) - 1;
    while (at > 0) {
      const above = (at - 1) >> 1;
      if (!comesFirst(place, heap[above] as Place)) break;
      heap[at] = heap[above] as Place;
      at = above;
    }
    heap[at] = place;
  }

  dropFirst(): void {
    const { heap } = this;
    const last = heap.pop();
    if (!last || heap.length === 0) return;
    let at = 0;
    for (;;) {
      let next = 2 * at + 1;
      if (next >= heap.length) break;
      if (next + 1 < heap.length && comesFirst(heap[next + 1] as Place, heap[next] as Place)) next++;
      if (!comesFirst(heap[next] as Place, last)) break;
      heap[at] = heap[next] as Place;
      at = next;
    }
    heap[at] = last;
  }
}
