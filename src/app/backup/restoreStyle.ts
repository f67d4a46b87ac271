import { css } from "lit";

export const restoreStyle = css`
  dialog {
    width: min(46rem, calc(100vw - 1.5rem));
  }

  h2,
  .name {
    overflow-wrap: anywhere;
  }

  h3 {
    margin-bottom: 0.25rem;
  }

  .about {
    color: var(--ink-pale);
    font-size: var(--small);
  }

  fieldset {
    display: grid;
    gap: 0.25rem;
    min-width: 0;
    margin: 0 0 0.75rem;
    padding: 0.75rem 1rem 0.5rem;
    border: 1.5px solid var(--brass);
    border-radius: var(--round);
    background: var(--brass-wash);
  }

  legend {
    float: left;
    padding: 0;
  }

  legend,
  .name {
    color: var(--ink-strong);
    font-weight: 650;
  }

  legend + * {
    clear: both;
  }

  dl {
    display: grid;
    grid-template-columns: auto minmax(0, 1fr);
    gap: 0.125rem 0.75rem;
    font-size: var(--small);
  }

  dt {
    font-weight: 600;
  }

  @media (max-width: 30rem) {
    dl {
      grid-template-columns: minmax(0, 1fr);
    }

    dt:not(:first-child) {
      margin-top: 0.375rem;
    }
  }

  .answers {
    display: flex;
    flex-wrap: wrap;
    gap: 0 1.25rem;
  }

  .answers label {
    display: flex;
    align-items: center;
    gap: 0.5rem;
    min-height: var(--target);
  }

  input[type="radio"] {
    width: 1.375rem;
    min-height: 1.375rem;
    margin: 0;
    accent-color: var(--ink);
  }

  li {
    padding: 0.5rem 0;
    border-top: 1px solid var(--rule);
  }

  .replacing {
    display: grid;
    gap: 0.75rem;
    justify-items: start;
    padding: 0.75rem 1rem;
    border-left: 4px solid var(--limit);
    background: var(--limit-wash);
  }

  .replacing p {
    overflow-wrap: anywhere;
  }
`;
