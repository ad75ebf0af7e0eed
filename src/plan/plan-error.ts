import { Refusal } from "../quantity/errors.js";

/** A plan that is put together wrong, or whose limits no choice meets. */
export class PlanError extends Refusal {}
