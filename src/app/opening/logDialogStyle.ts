import { css } from "lit";

export const logDialogStyle = css`
  dialog {
    width: min(60rem, calc(100vw - 1.5rem));
    max-height: calc(100vh - 1.5rem);
    padding: var(--gap-wide);
    border: 1.5px solid var(--ink);
    border-radius: calc(var(--round) * 1.5);
    background: var(--sheet);
    color: inherit;
  }

  dialog::backdrop {
    background: rgb(12 38 71 / 45%);
  }

  .content {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: var(--gap);
  }

  h2 {
    overflow-wrap: anywhere;
  }

  .choices {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
  }

  .method {
    display: grid;
    gap: 0.25rem;
    max-width: 24rem;
  }

  .quiet {
    margin-left: -1rem;
  }

  .progress {
    display: grid;
    gap: 0.375rem;
    font-variant-numeric: tabular-nums;
  }

  progress {
    width: 100%;
    height: 0.75rem;
    accent-color: var(--ink);
  }
`;
