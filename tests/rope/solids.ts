/** Solids for tests, round numbers. */
export const wood = { conductivity: 0.2, density: 600, specificHeat: 1500 } as const;
export const skin = { conductivity: 0.37, density: 1100, specificHeat: 3400 } as const;
export const leather = { conductivity: 0.15, density: 900, specificHeat: 1500 } as const;
export const aluminium = { conductivity: 160, density: 2700, specificHeat: 900 } as const;
export const seed = { seed: 7, numRuns: 60 } as const;
