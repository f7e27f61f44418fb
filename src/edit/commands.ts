import type { Json } from '../model/cell.ts';
import { addCorner } from './addCorner.ts';
import { addFollower } from './addFollower.ts';
import { addMachine } from './addMachine.ts';
import { addOpening } from './addOpening.ts';
import { addPhase } from './addPhase.ts';
import { answerQuestion } from './answerQuestion.ts';
import type { Command } from './command.ts';
import { drawCrack } from './drawCrack.ts';
import { drawDimension } from './drawDimension.ts';
import { drawFinding } from './drawFinding.ts';
import { drawJoint } from './drawJoint.ts';
import { drawOutOfScope } from './drawOutOfScope.ts';
import { drawSlab } from './drawSlab.ts';
import { drawSteps } from './drawSteps.ts';
import { drawWall } from './drawWall.ts';
import { drawZone } from './drawZone.ts';
import { issueEstimate } from './issueEstimate.ts';
import { moveCorner } from './moveCorner.ts';
import { moveEdge } from './moveEdge.ts';
import { moveFollower } from './moveFollower.ts';
import { moveRecords } from './moveRecords.ts';
import { newFloor } from './newFloor.ts';
import { placeEntrance } from './placeEntrance.ts';
import { placeNote } from './placeNote.ts';
import { placeObstruction } from './placeObstruction.ts';
import { placePage } from './placePage.ts';
import { placeReading } from './placeReading.ts';
import { recordClearance } from './recordClearance.ts';
import { recordTick } from './recordTick.ts';
import { removeCorner } from './removeCorner.ts';
import { removeFollower } from './removeFollower.ts';
import { removeRecords } from './removeRecords.ts';
import { reorder } from './reorder.ts';
import { replacePage } from './replacePage.ts';
import { restore } from './restore.ts';
import { setEdge } from './setEdge.ts';
import { setEdgeLength } from './setEdgeLength.ts';
import { setField } from './setField.ts';
import { setFields } from './setFields.ts';
import { setRateRow } from './setRateRow.ts';
import { setRateRows } from './setRateRows.ts';
import { setRecipe } from './setRecipe.ts';
import { setUpstand } from './setUpstand.ts';
import { startJob } from './startJob.ts';
import { truePage } from './truePage.ts';

/** Every way a plan can change, by name. The name is the label of its undo step. */
export const commands: Readonly<Record<string, Command<Json>>> = {
  addCorner,
  addFollower,
  addMachine,
  addOpening,
  addPhase,
  answerQuestion,
  drawCrack,
  drawDimension,
  drawFinding,
  drawJoint,
  drawOutOfScope,
  drawSlab,
  drawSteps,
  drawWall,
  drawZone,
  issueEstimate,
  moveCorner,
  moveEdge,
  moveFollower,
  moveRecords,
  newFloor,
  placeEntrance,
  placeNote,
  placeObstruction,
  placePage,
  placeReading,
  recordClearance,
  recordTick,
  removeCorner,
  removeFollower,
  removeRecords,
  reorder,
  replacePage,
  restore,
  setEdge,
  setEdgeLength,
  setField,
  setFields,
  setRateRow,
  setRateRows,
  setRecipe,
  setUpstand,
  startJob,
  truePage,
};
