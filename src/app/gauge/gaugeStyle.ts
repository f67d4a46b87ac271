import { css } from "lit";

export const gaugeStyle = css`
  :host {
    border: 1px solid var(--rule);
    border-radius: var(--round);
  }

  summary {
    padding: 0 0.75rem;
  }

  summary .state {
    margin-left: auto;
    padding-left: 0.25rem;
    color: var(--ink-pale);
    font-size: var(--smallest);
    font-weight: 500;
    text-align: right;
  }

  .content {
    display: grid;
    gap: 0.625rem;
    padding: 0.25rem 0.75rem 0.75rem;
  }

  .pair {
    display: grid;
    grid-template-columns: 1fr 1fr;
    gap: 0.5rem;
  }

  .line {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    min-height: 56px;
    padding: 0.25rem 0.5rem;
    border-radius: var(--round);
    background: var(--wash);
    font-family: ui-monospace, monospace;
    white-space: pre-wrap;
  }

  .line button {
    min-width: 48px;
    margin: 0 0.125rem;
    padding: 0 0.375rem;
    font-family: inherit;
  }

  .line [aria-pressed="true"] {
    background: var(--ink);
    color: var(--on-ink);
  }

  .check {
    display: flex;
    align-items: center;
    gap: 0.75rem;
    min-height: var(--target);
    cursor: pointer;
  }

  .check input {
    flex: none;
    width: 1.5rem;
    min-height: 1.5rem;
    accent-color: var(--ink);
  }

  .hint {
    color: var(--ink-pale);
    font-size: var(--small);
  }
`;
