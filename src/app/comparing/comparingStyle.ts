import { css } from "lit";

export const comparingStyle = css`
  :host {
    container-type: inline-size;
    padding: 0.25rem 0 1.25rem;
  }

  :host > *,
  .answer > * {
    margin-bottom: var(--gap-wide);
  }

  .choice {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 14rem), 1fr));
    gap: 0.5rem var(--gap);
  }

  .stale {
    opacity: 0.6;
    transition: opacity var(--quick) 400ms;
  }

  .lead {
    max-width: 60ch;
    color: var(--ink-strong);
    font-size: clamp(1.125rem, 1rem + 0.6vw, 1.375rem);
    font-weight: 600;
    line-height: 1.35;
    text-wrap: pretty;
  }

  .acceptance {
    --tone: var(--ink-pale);

    display: grid;
    grid-template-columns: auto minmax(0, 1fr);
    gap: 0.5rem 1rem;
    align-items: center;
    padding: 0.875rem 1rem 1rem;
    border-left: 5px solid var(--tone);
    background: var(--wash);
  }

  .acceptance.proven {
    --tone: var(--good);
  }

  .acceptance.disproven {
    --tone: var(--limit);
  }

  .acceptance svg {
    width: 44px;
    color: var(--tone);
  }

  .acceptance h3 {
    font-size: 1.25rem;
  }

  .acceptance p {
    grid-column: 1 / -1;
    max-width: 68ch;
  }

  h3 {
    margin-bottom: 0.5rem;
    font-size: 1.0625rem;
  }

  .acceptance h3 {
    margin: 0;
  }

  .running-in p {
    max-width: 68ch;
    margin-bottom: var(--gap);
  }

  .lines {
    display: grid;
    gap: 0.5rem;
    padding-left: 1.25rem;
    list-style: square;
  }

  .cautions {
    padding: 0.75rem 1rem;
    border-left: 4px solid var(--brass);
    background: var(--brass-wash);
    font-size: 0.9375rem;
  }

  figcaption {
    margin-bottom: 0.5rem;
    font-weight: 650;
  }

  .picture svg {
    display: block;
    width: 100%;
    max-width: 60rem;
    height: auto;
  }

  .narrow svg {
    max-width: 34rem;
  }

  .wide {
    display: none;
  }

  @container (min-width: 40rem) {
    .wide {
      display: block;
    }

    .narrow {
      display: none;
    }
  }

  summary {
    display: inline-flex;
    align-items: center;
    color: var(--ink);
    text-decoration: underline;
    text-underline-offset: 0.2em;
  }

  table {
    width: 100%;
    max-width: 46rem;
    border-collapse: collapse;
  }

  caption {
    padding-bottom: 0.375rem;
    color: var(--ink-strong);
    font-weight: 650;
    text-align: left;
  }

  th,
  td {
    padding: 0.5rem 0.75rem 0.5rem 0;
    border-bottom: 1px solid var(--rule);
    font-weight: 400;
    text-align: left;
    vertical-align: top;
  }

  thead th {
    color: var(--ink-pale);
    font-size: var(--small);
    vertical-align: bottom;
  }

  th:last-child,
  td:last-child {
    padding-right: 0;
  }

  td .range {
    display: block;
    color: var(--ink-pale);
    font-size: var(--small);
  }

  .scroll {
    overflow-x: auto;
  }

  .along :is(th, td) {
    padding-right: 0.375rem;
    text-align: right;
  }

  .along :is(tbody th, td:not(:last-child)),
  .running-in tbody th {
    white-space: nowrap;
  }

  @container (max-width: 32rem) {
    .key {
      grid-template-columns: 1fr;
    }

    /* What a row is about stands above its figures, which have the whole width then. */
    .quantities tr {
      display: grid;
      grid-template-columns: repeat(3, minmax(0, 1fr));
      padding: 0.5rem 0;
      border-bottom: 1px solid var(--rule);
    }

    .quantities :is(th, td) {
      padding-block: 0;
      border: 0;
    }

    .quantities tbody th {
      grid-column: 1 / -1;
      color: var(--ink-strong);
      font-weight: 600;
    }

    .quantities thead th:first-child {
      position: absolute;
      clip-path: inset(50%);
    }

    .along,
    .running-in table {
      font-size: var(--small);
    }

    .along :is(th, td):not(:last-child) {
      padding-right: 0.125rem;
    }

    .along thead th {
      font-size: 0.75rem;
    }
  }

  .beneath {
    max-width: 46rem;
    margin-top: 0.5rem;
    color: var(--ink-pale);
    font-size: var(--small);
  }

  tightspot-comparison-report {
    margin-bottom: var(--gap);
  }

  @media print {
    details,
    .choice {
      display: none;
    }

    figure,
    .acceptance {
      break-inside: avoid;
    }
  }
`;
