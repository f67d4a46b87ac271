import { css } from "lit";

/** Buttons, fields and type, alike in every part of the page. */
export const controls = css`
  *,
  *::before,
  *::after {
    box-sizing: border-box;
  }

  :host {
    display: block;
  }

  :host([hidden]),
  [hidden] {
    display: none !important;
  }

  h1,
  h2,
  h3,
  p,
  dl,
  dd,
  ul,
  ol,
  figure {
    margin: 0;
    padding: 0;
  }

  ul,
  ol {
    list-style: none;
  }

  h1,
  h2,
  h3 {
    color: var(--ink-strong);
    line-height: 1.2;
    letter-spacing: -0.012em;
    text-wrap: balance;
  }

  h2 {
    font-size: 1.25rem;
  }

  h3 {
    font-size: 1rem;
  }

  .label {
    color: var(--ink-pale);
    font-size: var(--smallest);
    font-weight: 600;
    letter-spacing: 0.01em;
  }

  .figures {
    font-variant-numeric: tabular-nums;
  }

  .unseen {
    position: absolute;
    width: 1px;
    height: 1px;
    margin: -1px;
    overflow: hidden;
    clip-path: inset(50%);
    white-space: nowrap;
  }

  :focus-visible {
    outline: 3px solid var(--brass);
    outline-offset: 2px;
    border-radius: var(--round);
  }

  a {
    color: var(--ink);
    text-underline-offset: 0.2em;
  }

  button,
  .button,
  summary {
    min-height: var(--target);
    font: inherit;
    cursor: pointer;
    touch-action: manipulation;
  }

  button,
  .button {
    display: inline-flex;
    align-items: center;
    justify-content: center;
    gap: 0.5rem;
    padding: 0.5rem 1rem;
    border: 1.5px solid var(--ink);
    border-radius: var(--round);
    background: var(--sheet);
    color: var(--ink);
    font-weight: 600;
    line-height: 1.2;
    text-align: center;
    text-decoration: none;
    transition: background-color var(--quick);
  }

  button:hover,
  .button:hover {
    background: var(--wash);
  }

  button.chief,
  .button.chief {
    background: var(--ink);
    color: var(--on-ink);
  }

  button.chief:hover,
  .button.chief:hover {
    background: var(--ink-strong);
  }

  button.quiet,
  .button.quiet {
    border-color: transparent;
    background: transparent;
  }

  button.quiet:hover,
  .button.quiet:hover {
    background: var(--wash);
  }

  button:disabled {
    opacity: 0.55;
    cursor: default;
  }

  input,
  select,
  textarea {
    width: 100%;
    min-height: var(--target);
    padding: 0.5rem 0.75rem;
    border: 1.5px solid var(--ink-pale);
    border-radius: var(--round);
    background: var(--sheet);
    color: var(--ink-strong);
    font: inherit;
    font-size: 1.0625rem;
    font-variant-numeric: tabular-nums;
  }

  select {
    text-overflow: ellipsis;
  }

  input::placeholder {
    color: var(--ink-pale);
    opacity: 1;
  }

  [aria-invalid="true"] {
    border-color: var(--limit);
    background: var(--limit-wash);
  }

  :is(input, select, textarea):focus-visible {
    outline-offset: -1.5px;
  }

  .wrong {
    color: var(--limit);
    font-size: var(--small);
  }

  .sheet {
    padding: var(--gap-wide);
    border: 1px solid var(--rule);
    border-radius: calc(var(--round) * 1.5);
    background: var(--sheet);
  }

  .paper-only {
    display: none;
  }

  /* The browser would put a plate of the page's ground behind their words. */
  @media (forced-colors: active) {
    .chief,
    [aria-pressed="true"],
    label:has(:checked) {
      forced-color-adjust: none;
    }
  }

  @media print {
    button:not(thead button),
    .screen-only {
      display: none !important;
    }

    .paper-only {
      display: block;
    }

    h1,
    h2,
    h3 {
      break-after: avoid;
    }

    /*
     * A heading is read on paper, too, though it cannot be pressed. Chromium repeats the head of a table on each further
     * page, but no button in it: only the words of the button are left.
     */
    thead button {
      display: contents;
    }

    input,
    select,
    textarea {
      min-height: 0;
      padding: 0;
      border: 0;
      background: none;
      appearance: none;
    }

    .sheet {
      padding: 0;
      border: 0;
    }
  }
`;
