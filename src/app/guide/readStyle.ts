import { css } from "lit";

export const readStyle = css`
  :host {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.625rem;
  }

  .head {
    display: flex;
    align-items: start;
    justify-content: space-between;
    gap: 0.5rem;
  }

  .which {
    color: var(--ink-pale);
    font-size: var(--small);
    font-weight: 600;
  }

  .where {
    color: var(--ink-strong);
    font-size: 2.5rem;
    font-weight: 750;
    line-height: 1.1;
    letter-spacing: -0.02em;
    font-variant-numeric: tabular-nums;
  }

  h3.words {
    padding-top: 0.25rem;
    font-size: 1.5rem;
  }

  .about {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.5rem;
    align-content: start;
  }

  /* The field and the keypad stay where they are under the thumb, whatever is told above them. */
  @media (max-width: 63.99rem) {
    .about {
      min-height: 15.75rem;
    }
  }

  summary.todo {
    display: flex;
    align-items: center;
    gap: 0.75rem;
    padding: 0.125rem 0;
    color: var(--ink-strong);
    font-weight: 450;
    line-height: 1.35;
  }

  summary.todo::after {
    content: "?";
    flex: none;
    display: grid;
    place-items: center;
    width: 1.75rem;
    height: 1.75rem;
    margin-left: auto;
    border: 1.5px solid var(--ink);
    border-radius: 50%;
    color: var(--ink);
    font-weight: 700;
  }

  .steps {
    display: flex;
    margin: -0.25rem -0.5rem 0 0;
  }

  .steps button {
    min-width: 48px;
    padding: 0 0.5rem;
  }

  .slip {
    display: grid;
    gap: 0.5rem;
    padding: 0.625rem;
    border: 2px solid var(--brass);
    border-radius: var(--round);
    background: var(--brass-wash);
    font-size: 0.9375rem;
    line-height: 1.35;
  }

  .slip strong::before {
    content: "!";
    display: inline-grid;
    place-items: center;
    width: 1.375em;
    height: 1.375em;
    margin-right: 0.375rem;
    border-radius: 50%;
    background: var(--brass);
    color: var(--sheet);
    font-size: 0.875rem;
  }

  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 0.375rem;
  }

  .buttons button {
    padding-inline: 0.5rem;
    font-size: 0.9375rem;
  }

  .slip .buttons button {
    flex: 1 1 auto;
    padding-inline: 0.25rem;
    font-size: 0.875rem;
  }

  .offer {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    gap: 0.5rem 0.75rem;
    padding: 0.625rem 0.75rem;
    border-left: 4px solid var(--ink);
    background: var(--wash);
  }

  .offer p {
    flex: 1 1 14rem;
    font-size: var(--small);
  }

  .correcting {
    padding: 0.5rem 0.75rem;
    border-left: 4px solid var(--brass);
    background: var(--brass-wash);
  }

  .keys {
    color: var(--ink-pale);
    font-size: var(--small);
  }

  kbd {
    padding: 0.0625rem 0.375rem;
    border: 1px solid var(--rule);
    border-radius: 4px;
    font: inherit;
    font-size: var(--smallest);
  }

  /* Where there is no keyboard, there are no keys to tell of. */
  @media (max-width: 63.99rem), (any-pointer: coarse) {
    .keys {
      display: none;
    }
  }
`;
