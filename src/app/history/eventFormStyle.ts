import { css } from "lit";

export const eventFormStyle = css`
  .form {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.75rem 1rem;
    padding: 1rem;
    border: 1.5px solid var(--ink);
    border-radius: var(--round);
  }

  label {
    display: block;
  }

  textarea {
    min-height: 6rem;
    resize: vertical;
  }

  ul:not(:has(li)),
  .hint:empty {
    display: none;
  }

  li {
    display: flex;
    flex-wrap: wrap;
    gap: 0.75rem;
    padding: 0.5rem 0;
  }

  li > tightspot-photograph {
    width: 8rem;
    height: 6rem;
    overflow: hidden;
    border-radius: var(--round);
  }

  li > div {
    flex: 1 1 14rem;
  }

  li button {
    margin-left: -1rem;
  }

  .actions {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem 0.75rem;
  }

  .hint {
    color: var(--ink-pale);
    font-size: var(--small);
  }

  @media (min-width: 40rem) {
    .form {
      grid-template-columns: 12rem 14rem minmax(0, 1fr);
    }

    .form > :not(.date, .kind) {
      grid-column: 1 / -1;
    }
  }
`;
