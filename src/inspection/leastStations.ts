/** With fewer stations than this no verdict is given. */
export const LEAST_STATIONS = 5;
