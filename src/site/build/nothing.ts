/** Stands in the place of packages that another package would load for what is never asked of it. */
export {};
