import { css } from "lit";

export const chartStyle = css`
  .head {
    display: flex;
    flex-wrap: wrap;
    align-items: center;
    justify-content: space-between;
    gap: 0 0.75rem;
    min-height: var(--target);
    margin-bottom: 0.25rem;
  }

  figcaption {
    flex: 1 1 14rem;
    font-weight: 650;
  }

  .zoom {
    display: flex;
    flex-wrap: wrap;
    margin-left: auto;
  }

  .zoom button {
    min-width: var(--target);
    padding: 0.25rem 0.5rem;
    font-size: 1.25rem;
  }

  .zoom .whole {
    font-size: var(--small);
  }

  @media (max-width: 30rem) {
    .zoom {
      flex-wrap: nowrap;
    }

    .zoom .whole {
      padding-inline: 0;
      line-height: 1.15;
    }
  }

  .chart {
    position: relative;
    height: clamp(260px, 42vh, 420px);
    font-family: var(--text);
  }

  canvas {
    display: block;
    width: 100%;
    height: 100%;
  }

  .reader {
    position: absolute;
    inset: 0;
    cursor: crosshair;
    touch-action: pan-y;
    user-select: none;
    -webkit-user-select: none;
  }

  .line,
  .selection {
    position: absolute;
    pointer-events: none;
  }

  .line {
    width: 0;
    border-left: 1.5px solid var(--ink-strong);
  }

  .line i {
    position: absolute;
    width: 11px;
    height: 11px;
    translate: -6.5px -5.5px;
    border: 2px solid var(--sheet);
    border-radius: 50%;
    background: var(--ink-strong);
    forced-color-adjust: none;
  }

  .selection {
    border: 1.5px dashed var(--ink);
    background: color-mix(in srgb, var(--ink) 14%, transparent);
  }

  .readout {
    min-height: 4.5rem;
    margin-top: 0.25rem;
    font-variant-numeric: tabular-nums;
  }

  .readout .hint {
    color: var(--ink-pale);
    font-size: var(--small);
  }

  summary {
    display: inline-flex;
    align-items: center;
    color: var(--ink);
    text-decoration: underline;
    text-underline-offset: 0.2em;
  }

  .on-paper {
    display: none;
  }

  @media (min-width: 48rem) {
    .readout {
      min-height: 3rem;
    }
  }

  @media print {
    .head,
    .chart,
    .readout,
    details {
      display: none;
    }

    .on-paper {
      display: block;
      break-inside: avoid;
    }

    .on-paper svg {
      width: 100%;
      height: auto;
    }
  }
`;
