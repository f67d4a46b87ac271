import { css } from "lit";

export const screwStyle = css`
  section,
  figure,
  .place {
    display: grid;
    grid-template-columns: minmax(0, 1fr);
    gap: 0.75rem;
  }

  figcaption {
    font-weight: 650;
  }

  svg {
    display: block;
    width: 100%;
    height: auto;
    font-family: var(--text);
  }

  .stage {
    position: relative;
    cursor: pointer;
    touch-action: pan-y;
    user-select: none;
    -webkit-user-select: none;
  }

  .over {
    position: absolute;
    inset: 0;
    overflow: visible;
    pointer-events: none;
  }

  .grip {
    position: absolute;
    min-width: var(--target);
    translate: -50%;
    cursor: grab;
  }

  .grip:active {
    cursor: grabbing;
  }

  .beside {
    display: grid;
    grid-template-columns: repeat(auto-fit, minmax(min(100%, 18rem), 1fr));
    gap: var(--gap) var(--gap-wide);
    align-items: start;
  }

  .where {
    display: flex;
    align-items: center;
    min-height: var(--target);
  }

  .place p {
    max-width: 52ch;
  }

  .place strong {
    display: block;
    font-size: 1.25rem;
    font-weight: 700;
  }

  .jumps,
  .key {
    display: flex;
    flex-wrap: wrap;
    gap: 0.5rem;
    align-items: center;
  }

  .jumps button {
    flex: 0 1 auto;
    padding-inline: 0.75rem;
    white-space: nowrap;
  }

  .key {
    color: var(--ink-pale);
    font-size: var(--small);
  }

  .key svg {
    width: auto;
  }

  .section svg {
    max-width: 26rem;
    font: 600 13px var(--text);
    font-variant-numeric: tabular-nums;
  }

  .section figcaption {
    color: var(--ink-pale);
    font-size: var(--small);
    font-weight: 400;
  }

  .rimmed {
    paint-order: stroke;
    stroke: var(--sheet);
    stroke-width: 4px;
    stroke-linejoin: round;
  }

  fieldset {
    display: flex;
    flex-wrap: wrap;
    margin: 0;
    padding: 0;
    border: 0;
  }

  label {
    position: relative;
    display: inline-flex;
    align-items: center;
    justify-content: center;
    min-width: 7.5rem;
    min-height: var(--target);
    padding: 0.375rem 0.875rem;
    border: 1.5px solid var(--ink);
    color: var(--ink);
    font-weight: 600;
    cursor: pointer;
  }

  label:first-of-type {
    border-radius: var(--round) 0 0 var(--round);
  }

  label + label {
    border-left: 0;
    border-radius: 0 var(--round) var(--round) 0;
  }

  label input {
    position: absolute;
    inset: 0;
    height: 100%;
    margin: 0;
    opacity: 0;
    cursor: pointer;
  }

  label:has(:checked) {
    background: var(--ink);
    color: var(--on-ink);
  }

  label:has(:checked) span {
    text-decoration: underline;
    text-decoration-thickness: 2px;
    text-underline-offset: 0.3em;
  }

  label:has(:focus-visible) {
    z-index: 1;
    outline: 3px solid var(--brass);
    outline-offset: 2px;
  }

  @media (forced-colors: active) {
    label:has(:checked) {
      background: Highlight;
      color: HighlightText;
      forced-color-adjust: none;
    }
  }

  @media print {
    figure,
    .place {
      break-inside: avoid;
    }

    label:not(:has(:checked)) {
      display: none;
    }

    label:has(:checked) {
      min-height: 0;
      padding: 0;
      border: 0;
      background: none;
      color: var(--ink);
    }
  }
`;
