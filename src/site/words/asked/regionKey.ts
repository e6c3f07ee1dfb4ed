/** Under which the chart of what a machine takes is asked. */
export const REGION = "region";
