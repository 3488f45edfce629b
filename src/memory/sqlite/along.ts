import type { Along } from './group.ts';
import type { Ledger } from './ledger.ts';
import type { Statements } from './statements.ts';

/** The ledger goes with each commit that changes it. */
export const along = (ledger: Ledger, sql: Statements): Along => ({
  write: () => {
    if (ledger.isChanged) sql.ledger.run(ledger.sealed());
  },
  kept: () => ledger.kept(),
  mark: () => {
    const { state } = ledger;
    return () => ledger.back(state);
  },
  undo: () => ledger.back(),
});
