export const RAD_PER_DEG = Math.PI / 180
export const radFromDeg = (deg: number): number => deg * RAD_PER_DEG
export const degFromRad = (rad: number): number => rad / RAD_PER_DEG
