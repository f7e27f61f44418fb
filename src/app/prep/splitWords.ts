import type { SplitBlock } from './splitBlocks.ts';
import { blockedReason, tightReason } from './tightReason.ts';
import type { ZoneRecipe } from './zoneRecipe.ts';
import type { Doc } from '../../model/doc.ts';
import { showSize } from '../../model/showLength.ts';
import { figureText, showRun } from '../../model/showNumber.ts';
import type { Units } from '../../model/units.ts';
import { cascadeOf, edgeMachine, type PlannedMachine } from '../../takeoff/prep.ts';
import { prepText } from '../../words/stageWords.ts';

interface SplitContext {
  readonly units: Units;
  readonly recipe: ZoneRecipe;
  readonly doc: Doc;
}

/** What a block is called, and in one line why it is as large as it is. */
export function splitWords(
  block: SplitBlock,
  context: SplitContext,
): { readonly name: string; readonly reason: string } {
  const { recipe, units, doc } = context;
  const tool = recipe.edgeTool ? shortTerm(recipe.edgeTool.term) : prepText.handTool;
  if (block.kind === 'machine') {
    const machine = cascadeOf(recipe.prep).find(({ id }) => id === block.machine) ?? recipe.machine;
    return { name: machine?.name ?? '', reason: machineReason(block, machine, context) };
  }
  if (block.kind === 'strip') return { name: prepText.edgeStrip(tool), reason: stripReason(block, context) };
  if (block.kind === 'rests') return { name: prepText.rests(tool), reason: prepText.restsReason };
  const tag = block.tag ?? '';
  const name = block.kind === 'cutOff' ? prepText.cutOff(tool) : prepText.tightSpot(tool, tag);
  const { prep, passageMm } = recipe;
  const { blockedBy, keptOff = null, gap = null } = block;
  const kind = block.kind === 'cutOff' ? 'cutOff' : 'gap';
  return { name, reason: tightReason({ kind, blockedBy, keptOff, gap }, { units, doc, prep, passageMm }) };
}

/** "Handheld grinder, segmented cup wheel" is a handheld grinder where its work is what matters. */
function shortTerm(term: string): string {
  return term.split(',')[0] ?? term;
}

function machineReason(block: SplitBlock, machine: PlannedMachine | null, context: SplitContext): string {
  const { units, doc, recipe } = context;
  if (block.barred && block.blockedBy) {
    return blockedReason(block.blockedBy, { units, doc, prep: recipe.prep, passageMm: recipe.passageMm });
  }
  if (block.barred) return block.place === 0 ? prepText.noWayIn : prepText.nothingLeft;
  const clearanceMm = machine?.clearanceMm.wall ?? 0;
  const clearance = figureText(showSize(clearanceMm, units));
  if (block.place > 0) return clearanceMm === 0 ? prepText.worksAllRest : prepText.worksRest(clearance);
  return clearanceMm === 0 && block.share > 0.9999 ? prepText.reachesAll : prepText.reachesAllBut(clearance);
}

/** Where machines follow each other, the last one decides how wide the strip is, and that is said. */
function stripReason(block: SplitBlock, { units, recipe }: SplitContext): string {
  const edge = prepText.edgeRun(figureText(showRun(block.edgeM, units)));
  const run = block.stopM > 0 ? prepText.andStopLine(edge, figureText(showRun(block.stopM, units))) : edge;
  const last = edgeMachine(recipe.prep);
  const stripMm = last ? last.clearanceMm.wall + last.lapMm : 0;
  if (!last || stripMm === 0) return prepText.edgeMetres(run);
  const strip = figureText(showSize(stripMm, units));
  return recipe.prep.followers.length > 0
    ? prepText.edgeAfter(run, strip, last.name)
    : prepText.edgeMetresStrip(run, strip);
}
