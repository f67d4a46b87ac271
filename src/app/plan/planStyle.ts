import { css } from "lit";

export const planStyle = css`
  .content {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--gap);
    max-width: 68rem;
    padding: 0.25rem 0 1.25rem;
  }

  .number {
    max-width: 16rem;
  }

  .notes {
    display: grid;
    gap: 0.375rem;
    padding: 0.75rem 1rem;
    border-left: 4px solid var(--brass);
    background: var(--brass-wash);
  }

  .stations {
    columns: 19rem;
    column-gap: 2rem;
    padding-left: 0;
    counter-reset: station calc(var(--first) - 1);
  }

  .stations li {
    display: grid;
    grid-template-columns: 2rem 6rem minmax(0, 1fr);
    gap: 0.5rem;
    align-items: baseline;
    padding: 0.3125rem 0;
    border-bottom: 1px solid var(--rule);
    break-inside: avoid;
    counter-increment: station;
  }

  .stations li::before {
    content: counter(station);
    color: var(--ink-pale);
    font-variant-numeric: tabular-nums;
    text-align: right;
  }

  .stations strong {
    text-align: right;
  }

  .turns {
    color: var(--ink-pale);
    font-size: var(--small);
    font-variant-numeric: tabular-nums;
  }

  .actions {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem 0.75rem;
  }

  .more {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 18rem), 1fr));
    gap: var(--gap) var(--gap-wide);
  }

  .lines {
    display: grid;
    gap: 0.375rem;
    margin-top: 0.5rem;
    padding-left: 1.125rem;
    list-style: square;
  }
`;
