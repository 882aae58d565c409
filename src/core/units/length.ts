/** Millimetres in one international inch: exact by definition since 1959 (NIST SP 811). */
export const MM_PER_INCH = 25.4
export const MM_PER_METRE = 1000
