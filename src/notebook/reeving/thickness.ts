/** Thinnest and thickest rope of a drawing [px]: five to one. */
const thinnestRope = 1.5;
export const thickestRope = 7.5;

/** Width of a rope under a tension [px], in a straight line from none to the largest tension of the drawing. */
export function ropeWidth(tension: number, largest: number): number {
  const share = largest > 0 ? Math.min(1, Math.max(0, tension / largest)) : 0;
  return thinnestRope + (thickestRope - thinnestRope) * share;
}
