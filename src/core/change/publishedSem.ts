/**
 * Between two days the same person moves differently by this much even where nothing changed, one standard error,
 * degrees: single-leg squat and landing of 20 adults, digitised by hand (Munro 2012, J Sport Rehabil 21:7).
 */
export const betweenDaysSemDeg = 3.01;
