import { hasReadings, surveysByDate } from "../../analysis/surveysByDate.ts";
import { type FileProblem, failed, type Outcome, succeeded } from "../../inspection/problem.ts";
import type { Inspection } from "../../inspection/schema.ts";
import type { FileRead, SurveyRead } from "../fileRead.ts";
import type { FileReader } from "../fileReader.ts";

/** One survey to assess. */
export interface Task extends SurveyRead {
  readonly file: string;
  /** Whether it is the survey that represents its slide in an overview. */
  readonly standsForSlide: boolean;
}

export interface TasksRead {
  readonly tasks: readonly Task[];
  /** Files that could not be read, and rows of logs that could not be read. */
  readonly unread: readonly FileProblem[];
}

/**
 * The surveys to assess in the files.
 *
 * @param id only the survey with this id; all where undefined
 */
export async function readTasks(
  files: readonly string[],
  reader: FileReader<Inspection>,
  id: string | undefined,
): Promise<TasksRead> {
  const tasks: Task[] = [];
  const unread: FileProblem[] = [];
  for (const file of files) {
    const read = await reader(file);
    const found = read.ok ? tasksOf(file, read.value, id) : read;
    if (read.ok) unread.push(...read.value.refused.map((problem) => ({ file, problem })));
    if (found.ok) tasks.push(...found.value);
    else unread.push({ file, problem: found.problem });
  }
  return { tasks, unread };
}

function tasksOf(file: string, { surveys }: FileRead, id: string | undefined): Outcome<readonly Task[]> {
  if (surveys.length === 0) return failed("surveys", "there is no survey in it", "Add readings to it first.");
  const found = id === undefined ? surveys : surveys.filter(({ survey }) => survey === id);
  const known = surveys.map(({ survey }) => survey).join(", ");
  const latest = latestOf(found);
  return found.length === 0
    ? failed("", `there is no survey "${id}"`, `Its surveys: ${known}.`)
    : succeeded(found.map((each) => ({ ...each, file, standsForSlide: each.survey === latest })));
}

/** The latest survey that holds readings; where none does, the latest, whose assessment then says so. */
function latestOf(surveys: readonly SurveyRead[]): string | undefined {
  const inTime = surveysByDate(
    surveys.flatMap(({ inspection, survey }) => inspection.surveys.filter(({ id }) => id === survey)),
  );
  return (inTime.findLast(hasReadings) ?? inTime.at(-1))?.id;
}
