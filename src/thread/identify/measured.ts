/** A worn screw as it was measured. Lengths in millimetres, uncertainties expanded (95 %). */
export interface Measured {
  /** The largest outside diameter found. */
  readonly outside: number;
  /** Distance over `turns` threads, from one flank to the like flank. */
  readonly distance: number;
  readonly turns: number;
  /** Included angle of the flanks in degrees, where it is known. */
  readonly angle?: number;
  /** Diameter at the root, where it was measured. */
  readonly root?: number;
  readonly uncertainty: { readonly outside: number; readonly distance: number; readonly angle: number };
}
