import { css } from "lit";

/** A heading that opens and closes what is under it. */
export const fold = css`
  summary {
    display: flex;
    align-items: center;
    color: var(--ink);
    font-weight: 600;
  }

  summary::before {
    content: "▸";
    width: 1.25rem;
  }

  [open] > summary::before {
    content: "▾";
  }
`;

/** The same for a whole part of the page, with a drawn mark and a heading of its own. */
export const partFold = css`
  summary {
    display: flex;
    align-items: center;
    gap: 0.5rem;
    min-height: 56px;
    color: var(--ink);
    list-style: none;
  }

  summary::-webkit-details-marker {
    display: none;
  }

  summary::before {
    content: "";
    width: 0.5rem;
    height: 0.5rem;
    border: solid currentColor;
    border-width: 0 2px 2px 0;
    rotate: -45deg;
    transition: rotate var(--quick);
  }

  [open] > summary::before {
    rotate: 45deg;
  }

  h2 {
    font-size: 1.0625rem;
    font-weight: 650;
  }
`;

/** Beside the heading of such a part, what it holds. */
export const aboutFold = css`
  summary {
    flex-wrap: wrap;
    gap: 0 0.75rem;
    padding: 0.375rem 0;
  }

  .about {
    color: var(--ink-pale);
    font-size: var(--small);
  }
`;
