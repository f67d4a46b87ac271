declare const __TIGHTSPOT_VERSION__: string;

/** The version of the program, put in when it is built. */
export const PROGRAM_VERSION: string = __TIGHTSPOT_VERSION__;
