import { css } from "lit";

export const historyStyle = css`
  .content {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--gap);
    max-width: 60rem;
    padding: 0.25rem 0 1.25rem;
  }

  .actions {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem 0.75rem;
  }

  .hint,
  .given {
    color: var(--ink-pale);
    font-size: var(--small);
  }

  .hint {
    max-width: 68ch;
  }

  ol > li {
    position: relative;
    padding: 0 0 1.5rem 1.75rem;
  }

  ol > li::before {
    content: "";
    position: absolute;
    top: 0.3rem;
    left: 0.125rem;
    width: 0.875rem;
    height: 0.875rem;
    border: 2.5px solid var(--ink);
    border-radius: 50%;
    background: var(--sheet);
  }

  ol > li.event::before {
    border-color: var(--brass);
    border-radius: 2px;
    background: var(--brass-body);
  }

  ol > li:not(:last-child)::after {
    content: "";
    position: absolute;
    top: 1.4rem;
    bottom: -0.15rem;
    left: calc(0.5625rem - 1px);
    border-left: 2px solid var(--rule);
  }

  h3 {
    display: flex;
    flex-wrap: wrap;
    gap: 0 0.75rem;
    line-height: 1.4;
  }

  time {
    color: var(--ink-pale);
    font-weight: 400;
    font-variant-numeric: tabular-nums;
  }

  .note {
    max-width: 68ch;
    margin-top: 0.125rem;
    overflow-wrap: anywhere;
    white-space: pre-wrap;
  }

  .verdicts {
    display: grid;
    gap: 0.5rem;
    margin-top: 0.25rem;
  }

  .verdicts strong {
    color: var(--ink-strong);
  }

  .verdicts p {
    max-width: 68ch;
  }

  li .actions {
    margin: 0.125rem 0 0 -0.75rem;
    gap: 0;
  }

  li .actions button {
    padding-inline: 0.75rem;
    font-size: var(--small);
  }

  .photographs {
    display: flex;
    flex-wrap: wrap;
    gap: 0.625rem;
    margin-top: 0.625rem;
  }

  .photographs button {
    display: block;
    width: 9rem;
    height: 6.75rem;
    overflow: hidden;
    padding: 0;
    border-color: var(--rule);
  }

  .photographs tightspot-photograph {
    width: 100%;
    height: 100%;
  }

  @media print {
    .photographs button {
      display: block !important;
    }
  }
`;
