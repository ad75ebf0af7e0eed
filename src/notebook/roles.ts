/** Readers that a report may be for. */
export const allRoles = ["sailor", "coach", "engineer"] as const;

export type Role = (typeof allRoles)[number];

/** Whether something is a list of readers, each once, at least one. */
export function isRoleList(value: unknown): value is readonly Role[] {
  return (
    Array.isArray(value) &&
    value.length > 0 &&
    new Set(value).size === value.length &&
    value.every((one) => allRoles.some((role) => role === one))
  );
}

/**
 * Readers that a notebook is for, from its metadata `haulbook.roles`.
 *
 * @param metadata  of the notebook file
 * @returns readers, or nothing where the notebook names none
 * @throws Error that says in words what is wrong with the list
 * Example: roleList({ haulbook: { roles: ["coach"] } }) → ["coach"]
 */
export function roleList(metadata: unknown): readonly Role[] | undefined {
  const roles = (metadata as { haulbook?: { roles?: unknown } | null } | null | undefined)?.haulbook?.roles;
  if (roles === undefined) return undefined;
  if (isRoleList(roles)) return roles;
  throw new Error(`has the roles ${JSON.stringify(roles)}; write some of ${JSON.stringify(allRoles)}, each once`);
}
