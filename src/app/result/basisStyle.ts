import { css } from "lit";

export const basisStyle = css`
  .sheet {
    padding-block: 0.25rem;
  }

  details + details {
    border-top: 1px solid var(--rule);
  }

  .content {
    display: grid;
    gap: var(--gap);
    padding: 0.25rem 0 1.25rem 1rem;
  }

  .lines {
    display: grid;
    gap: 0.625rem;
  }

  .next li {
    display: grid;
    gap: 0.125rem;
    padding-left: 0.75rem;
    border-left: 3px solid var(--ink);
  }

  .checks li {
    padding-left: 0.75rem;
    border-left: 3px solid var(--rule);
  }

  .checks .warning {
    border-color: var(--brass);
  }

  .checks .stop {
    border-color: var(--limit);
  }

  .go {
    display: flex;
    flex-wrap: wrap;
    margin-left: -1rem;
  }

  .chances {
    display: grid;
    gap: 0.625rem;
  }

  .chances li {
    display: flex;
    flex-wrap: wrap;
    justify-content: space-between;
    gap: 0.125rem 1rem;
  }

  .chances .words {
    color: var(--ink-pale);
    font-variant-numeric: tabular-nums;
  }

  .chances .likeliest {
    font-weight: 650;
  }

  .bar {
    flex: 1 0 100%;
    height: 0.625rem;
    border-radius: 2px;
    background: var(--grid);
  }

  .bar i {
    display: block;
    height: 100%;
    min-width: 2px;
    border-radius: 2px;
    background: var(--ink);
    transition: width var(--quick);
    print-color-adjust: exact;
  }

  .quantities {
    display: grid;
    gap: 0.625rem;
    max-width: 44rem;
  }

  .quantities > div {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 12rem), 1fr));
    gap: 0 1rem;
    padding-bottom: 0.625rem;
    border-bottom: 1px solid var(--rule);
  }

  .quantities dt {
    color: var(--ink-pale);
  }

  table {
    width: 100%;
    max-width: 30rem;
    border-collapse: collapse;
  }

  caption {
    text-align: left;
  }

  th,
  td {
    padding: 0.375rem 0;
    border-bottom: 1px solid var(--rule);
    font-weight: 400;
    text-align: left;
  }

  td {
    text-align: right;
    white-space: nowrap;
  }

  .total > * {
    font-weight: 650;
  }

  @media print {
    details::details-content {
      content-visibility: visible;
      height: auto;
    }

    summary::before {
      display: none;
    }

    summary {
      min-height: 2.5rem;
      break-after: avoid;
    }

    li,
    tr,
    .quantities > div {
      break-inside: avoid;
    }

    /* The last part stays whole, and with what comes before it: no line is left over for a page of its own. */
    details:last-child {
      break-before: avoid;
      break-inside: avoid;
    }

    .content {
      padding-left: 0;
    }
  }
`;
