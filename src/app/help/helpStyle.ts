import { css } from "lit";

export const helpStyle = css`
  .part {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.75rem var(--gap-wide);
  }

  .part p,
  .part .steps {
    max-width: 68ch;
  }

  .words {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.75rem;
    align-content: start;
  }

  .part > svg,
  .way > svg {
    max-width: 24rem;
    font: 600 13px var(--text);
    fill: none;
    stroke-linejoin: round;
    stroke-linecap: round;
  }

  .rimmed {
    paint-order: stroke;
    stroke: var(--sheet);
    stroke-width: 4px;
  }

  .part h3 {
    margin-top: 0.75rem;
    font-size: 1.0625rem;
  }

  .steps {
    display: grid;
    gap: 0.375rem;
    padding-left: 1.5rem;
    list-style: decimal;
  }

  .way {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 15rem), 1fr));
    gap: 0.5rem var(--gap-wide);
    align-items: center;
  }

  .formula {
    padding: 0.125rem 0 0.125rem clamp(0rem, 6vw - 1.25rem, 1.5rem);
    color: var(--ink-strong);
    font-size: 1.0625rem;
  }

  table {
    width: 100%;
    border-collapse: collapse;
  }

  th,
  td {
    padding: 0.5rem 0.75rem 0.5rem 0;
    border-bottom: 1px solid var(--rule);
    text-align: left;
    vertical-align: top;
  }

  tbody th {
    font-weight: 600;
  }

  @media (max-width: 40rem) {
    thead {
      position: absolute;
      clip-path: inset(50%);
    }

    tr {
      display: grid;
      padding: 0.5rem 0;
      border-bottom: 1px solid var(--rule);
    }

    th,
    td {
      padding: 0;
      border: 0;
    }
  }

  @media (min-width: 60rem) {
    .part:has(> svg) {
      grid-template-columns: minmax(0, 1fr) 24rem;
    }

    .part > svg {
      order: 1;
    }
  }

  @media print {
    .part,
    .way,
    .formula,
    tr {
      break-inside: avoid;
    }

    .long {
      break-inside: auto;
    }
  }
`;
