/**
 * From this pain on, 0 to 10, exercising is always advised against, whatever a plan allows: a plan may have been
 * changed on its way. Strong pain begins there; common practice, no source.
 */
export const strongPainFrom = 7;

/**
 * Pain may be as much above the usual one. Our own choice, no source; more than the least change that can be
 * detected, 1.33 (numeric scale, knee osteoarthritis, n = 121, J Pain Res 2018, PMC5927184).
 */
export const mostAboveUsual = 2;
