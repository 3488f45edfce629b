/** A formula as a tree of plain data: a number, a symbol, or a call: the name of an operator or function, then its arguments. */
export type Tree = number | string | readonly Tree[];

/** A call taken apart. */
export const callOf = (tree: readonly Tree[]): { readonly fn: string; readonly args: readonly Tree[] } => ({
  fn: tree[0] as string,
  args: tree.slice(1),
});

/** Operators by their mathjs name, with the sign that print shows. A "group" is a pair of brackets. */
export const operatorSigns: Readonly<Record<string, string>> = {
  add: ' + ',
  subtract: ' − ',
  multiply: ' × ',
  divide: ' ÷ ',
  pow: '^',
  smaller: ' < ',
  smallerEq: ' ≤ ',
  larger: ' > ',
  largerEq: ' ≥ ',
};

/** The functions a formula may call; angles in radians. */
export const functions: Readonly<Record<string, (...values: number[]) => number>> = {
  min: Math.min,
  max: Math.max,
  sqrt: Math.sqrt,
  exp: Math.exp,
  log: Math.log,
  log10: Math.log10,
  abs: Math.abs,
  sin: Math.sin,
  cos: Math.cos,
  tan: Math.tan,
  asin: Math.asin,
  acos: Math.acos,
  atan: Math.atan,
};
