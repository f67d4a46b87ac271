import { css } from "lit";

export const whatIfStyle = css`
  :host {
    display: grid;
    gap: var(--gap-wide);
    padding: 0.25rem 0 0.5rem;
  }

  .fields {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 11rem), 1fr));
    gap: 0.25rem var(--gap);
  }

  input[type="range"] {
    display: block;
    min-height: var(--target);
    padding: 0;
    border: 0;
    background: none;
    accent-color: var(--ink);
    cursor: pointer;
    touch-action: pan-y;
  }

  .answer {
    display: grid;
    gap: 0.75rem;
    padding: 0.75rem 1rem 1rem;
    border-left: 4px solid var(--ink);
    background: var(--wash);
  }

  h3 {
    font-size: 1.25rem;
  }

  .left {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem 2rem;
  }

  .left dt,
  .instead {
    color: var(--ink-pale);
    font-size: var(--small);
  }

  .left dd {
    font-variant-numeric: tabular-nums;
  }

  .answer .bar {
    background: var(--sheet);
  }

  .choice {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
  }

  .choice [aria-disabled="true"] {
    opacity: 0.55;
    cursor: default;
  }
`;
