/** Totals of a whole boat that a plan can limit and make small. */
export type TotalName = "dry" | "wet" | "aloft" | "cost" | "handForce" | "worstHandForce" | "splices" | "minutes";
