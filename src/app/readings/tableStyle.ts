import { css } from "lit";

export const tableStyle = css`
  table {
    width: 100%;
    border-collapse: collapse;
    table-layout: fixed;
  }

  thead th {
    padding: 0;
    border-bottom: 2px solid var(--ink);
    background: var(--sheet);
    color: var(--ink-strong);
    font-size: var(--small);
    text-align: right;
    vertical-align: bottom;
  }

  @media (min-width: 64rem) {
    thead th {
      position: sticky;
      top: 0;
      z-index: 1;
    }
  }

  thead th:first-child {
    width: 3rem;
  }

  /* Four columns leave no room for wide cells on a phone. */
  table:has(.direction) th:first-child,
  .run {
    width: 2.625rem;
  }

  .target {
    width: 3.75rem;
  }

  .direction {
    width: 5.125rem;
  }

  table:has(.direction) thead button {
    flex-wrap: wrap;
    gap: 0 0.25rem;
  }

  .unit {
    color: var(--ink-pale);
    font-weight: 400;
  }

  /* Each row is painted anew only when it changes. */
  tr {
    isolation: isolate;
  }

  tbody tr:first-child > * {
    border-bottom: 1px solid var(--rule);
  }

  tbody:has(.under) tr:not(:last-child) > * {
    border-bottom-color: transparent;
  }

  .under td {
    border-bottom: 1px solid var(--rule);
  }

  th[scope="row"],
  td {
    padding: 0;
  }

  .number {
    display: grid;
    place-items: center;
    width: 100%;
    min-height: var(--target);
    padding: 0;
    border: 0;
    background: transparent;
    color: var(--ink-pale);
    font-size: var(--small);
    font-weight: 500;
    font-variant-numeric: tabular-nums;
  }

  .number.doubtful {
    box-shadow: inset 4px 0 var(--brass);
    color: var(--brass);
    font-weight: 750;
  }

  td input {
    padding-inline: 0.5rem;
    border: 0;
    border-radius: 0;
    background: transparent;
    font-size: 1.125rem;
    text-align: right;
  }

  table:has(.direction) td input {
    padding-inline: 0.25rem 0.5rem;
    font-size: 1rem;
  }

  td input:focus-visible {
    background: var(--wash);
    outline-offset: -3px;
  }

  td input[aria-invalid="true"] {
    background: var(--limit-wash);
    box-shadow: inset 0 -2px var(--limit);
  }

  .struck input {
    color: var(--ink-pale);
    text-decoration: line-through;
  }

  .under p {
    padding: 0 0.5rem 0.5rem 3rem;
    font-size: var(--small);
  }

  .why {
    color: var(--ink-pale);
  }

  .doubt {
    color: var(--brass);
    font-weight: 600;
  }

  thead button {
    justify-content: flex-end;
    gap: 0.25rem;
    width: 100%;
    padding: 0 0.5rem 0 0;
    border: 0;
    background: transparent;
    color: inherit;
    font-size: inherit;
  }

  .order {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    gap: 0 0.75rem;
    color: var(--ink-pale);
    font-size: var(--small);
  }

  @media print {
    /* On paper a row is read across without losing the line. */
    table {
      max-width: 32rem;
    }

    thead th {
      padding: 0 0.5rem 0.25rem 0;
    }

    /* A reading stays with what is said under it, and the head is not left alone at the foot of a page. */
    tbody {
      break-inside: avoid;
    }

    thead + tbody {
      break-before: avoid;
    }

    .number {
      display: grid !important;
    }

    .number,
    td input {
      min-height: 1.75rem;
      padding: 0 0.5rem;
      font-size: 0.875rem;
    }
  }
`;
