import type { Severity } from "../../analysis/assessment.ts";
import type { EvidencePart } from "./evidence.ts";

const SEVERITIES: Readonly<Record<Severity, string>> = {
  stop: "Stops the verdict",
  warning: "Warning",
  note: "Note",
};

/** What the checks found, with the readings that each finding names; null where they found nothing. */
export const checks: EvidencePart = ({ assessment }) => {
  if (assessment.checks.length === 0) return null;
  const entries = assessment.checks.map(({ check, severity, message, readings }) => ({
    lead: `${SEVERITIES[severity]}: ${check}`,
    text: message,
    severity,
    readings,
  }));
  return { title: "Checks on the readings", blocks: [{ kind: "list", entries }] };
};
