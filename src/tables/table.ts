/** One column: what stands in it, in which unit, and the heading that it shares with its neighbours. */
export interface Column {
  readonly group?: string;
  readonly head: string;
  readonly unit?: string;
}

/** One step of the worked row: what is reckoned, how, and what comes out. */
export interface Step {
  readonly what: string;
  /** The sum as it is keyed in, in degrees: "360° × sin 20°". */
  readonly sum: string;
  /** Its outcome, rounded, with its unit: "123.13°". */
  readonly is: string;
}

/** A table to be read without reckoning: a page of the site, and data for any other printer. */
export interface ReckonerTable {
  /** The end of its page's address. */
  readonly id: string;
  readonly title: string;
  /** What it is for, in a sentence. */
  readonly about: string;
  /** How it is read, and what its words mean. */
  readonly use: readonly string[];
  readonly formula: readonly string[];
  readonly columns: readonly Column[];
  /** How many columns at the left one looks up by. */
  readonly entries: number;
  /** The column whose change begins a new block of rows; every fifth row does where there is none. */
  readonly block?: number;
  /** Cells as they are printed; every row has as many as there are columns. */
  readonly rows: readonly (readonly string[])[];
  /** One row reckoned by hand: which, which of its columns come out, and how. */
  readonly worked: {
    readonly row: number;
    readonly columns: readonly number[];
    readonly steps: readonly Step[];
  };
  /** Source ids, or "derived here", or "common practice, no source". */
  readonly basis: readonly string[];
  /** Sources whose published examples come out the same. */
  readonly checked?: readonly string[];
  readonly caution?: string;
  /** Tables of part files that it goes by. */
  readonly goesBy?: readonly ("materials" | "gauges")[];
  /** The same table in the other units, or the other way round. */
  readonly twin?: string;
}

/** A cell that has no answer. */
export const NONE = "–";
