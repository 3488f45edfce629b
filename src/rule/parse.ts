import type { ConstantNode, FunctionNode, MathNode, OperatorNode, ParenthesisNode, SymbolNode } from 'mathjs';
// The single file loads ten times faster than the package's main entry.
import mathjs from 'mathjs/lib/browser/math.js';
import { functions, operatorSigns, type Tree } from './tree.ts';

/**
 * Lets mathjs parse a formula, and keeps of its tree what a rule may hold: numbers, its own symbols, `pi`,
 * + - * / ^, brackets, comparison, and the functions of `tree.ts`.
 * @throws Error naming the rule where the formula holds anything else
 */
export function parseFormula(name: string, formula: string, symbols: readonly string[]): Tree {
  const refuse = (what: string): never => {
    throw new Error(`rule ${name}: ${what} is not allowed in "${formula}"`);
  };
  const walk = (node: MathNode): Tree => {
    switch (node.type) {
      case 'ConstantNode': {
        const { value } = node as ConstantNode;
        return typeof value === 'number' ? value : refuse(`the constant ${String(value)}`);
      }
      case 'SymbolNode': {
        const symbol = (node as SymbolNode).name;
        return symbols.includes(symbol) || symbol === 'pi' ? symbol : refuse(`the symbol ${symbol}`);
      }
      case 'ParenthesisNode':
        return ['group', walk((node as ParenthesisNode).content)];
      case 'OperatorNode': {
        const { fn, args } = node as OperatorNode;
        if (fn !== 'unaryMinus' && !Object.hasOwn(operatorSigns, fn)) refuse(`the operator ${fn}`);
        return [fn, ...args.map(walk)];
      }
      case 'FunctionNode': {
        const call = node as FunctionNode;
        if (!Object.hasOwn(functions, call.fn.name)) refuse(`the function ${call.fn.name}`);
        return [call.fn.name, ...call.args.map(walk)];
      }
      default:
        return refuse(`a ${node.type}`);
    }
  };
  return walk(mathjs.parse(formula));
}
