import { svg } from "lit";

/** The page's own mark: a brass nut seated on a steel thread. */
export const brand = svg`<svg viewBox="0 0 32 32" width="32" height="32" aria-hidden="true">
  <path d="M1 27v-7l3-6h4l3 6h2l3-6h4l3 6h2l3-6h3v13z" fill="var(--steel)" />
  <path d="M7 4h18v5h-4l-3 6h-4l-3-6H7z" fill="var(--brass-body)" stroke="var(--brass)" />
</svg>`;
