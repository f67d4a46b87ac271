declare const __TIGHTSPOT_VERSION__: string;

/** The version of the program, inserted by the build. */
export const PROGRAM_VERSION: string = __TIGHTSPOT_VERSION__;
