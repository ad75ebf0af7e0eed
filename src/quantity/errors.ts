/** What every refusal of this library carries, so that a program can react and a person can act. */
export interface RefusalDetail {
  /** The quantity or thing that was refused, in words. */
  readonly quantity: string;
  /** What was found. */
  readonly value: string;
  /** What would have been accepted. */
  readonly allowed: string;
  /** What to do next. */
  readonly advice: string;
}

/** Parent of all refusals: the message always names quantity, value, what is allowed and what to do. */
export class Refusal extends Error {
  readonly quantity: string;
  readonly value: string;
  readonly allowed: string;
  readonly advice: string;

  constructor(detail: RefusalDetail) {
    super(`${detail.quantity}: got ${detail.value}; allowed: ${detail.allowed}. ${detail.advice}`);
    this.name = new.target.name;
    this.quantity = detail.quantity;
    this.value = detail.value;
    this.allowed = detail.allowed;
    this.advice = detail.advice;
  }
}

/** A unit that is missing, unknown, or of another kind of quantity. */
export class UnitError extends Refusal {}

/** A number that is not finite or that cannot exist. */
export class ValueError extends Refusal {}

/** A number that can exist, but for which the model was never shown to hold. */
export class OutsideModelError extends Refusal {}

/** A line, tackle or reeving that is not put together right. */
export class ReevingError extends Refusal {}
