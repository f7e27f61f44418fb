import type { SplitBlock } from './splitBlocks.ts';
import type { ZoneRecipe } from './zoneRecipe.ts';
import { passageName } from '../passageName.ts';
import type { Doc } from '../../model/doc.ts';
import { showLength, showSize } from '../../model/showLength.ts';
import { figureText, showRun } from '../../model/showNumber.ts';
import type { Units } from '../../model/units.ts';
import { machineText, prepText } from '../../words/stageWords.ts';

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
  const { recipe, units } = context;
  const tool = recipe.edgeTool ? shortTerm(recipe.edgeTool.term) : prepText.handTool;
  if (block.kind === 'machine') return { name: recipe.machine?.name ?? '', reason: machineReason(block, context) };
  if (block.kind === 'strip') {
    const stripMm = recipe.machine ? recipe.machine.clearanceMm.wall + recipe.machine.lapMm : 0;
    const edge = prepText.edgeRun(figureText(showRun(block.edgeM, units)));
    const run = block.stopM > 0 ? prepText.andStopLine(edge, figureText(showRun(block.stopM, units))) : edge;
    const reason =
      stripMm > 0 ? prepText.edgeMetresStrip(run, figureText(showSize(stripMm, units))) : prepText.edgeMetres(run);
    return { name: prepText.edgeStrip(tool), reason };
  }
  if (block.kind === 'rests') return { name: prepText.rests(tool), reason: prepText.restsReason };
  const tag = block.tag ?? '';
  const name = block.kind === 'cutOff' ? prepText.cutOff(tool) : prepText.tightSpot(tool, tag);
  return { name, reason: tightReason(block, context) };
}

/** "Handheld grinder, segmented cup wheel" is a handheld grinder where its work is what matters. */
function shortTerm(term: string): string {
  return term.split(',')[0] ?? term;
}

function machineReason(block: SplitBlock, context: SplitContext): string {
  if (block.barred) return block.blockedBy ? blockedReason(block.blockedBy, context) : prepText.noWayIn;
  const clearanceMm = context.recipe.machine?.clearanceMm.wall ?? 0;
  if (clearanceMm === 0 && block.share > 0.9999) return prepText.reachesAll;
  return prepText.reachesAllBut(figureText(showSize(clearanceMm, context.units)));
}

function tightReason(block: SplitBlock, context: SplitContext): string {
  if (block.blockedBy) return blockedReason(block.blockedBy, context);
  if (block.kind === 'cutOff') return prepText.noWayIn;
  if (block.keptOff) {
    const { kind, clearanceMm } = block.keptOff;
    return prepText.keptOff(figureText(showLength(clearanceMm, context.units)), machineText.clearance[kind]);
  }
  const needsMm = context.recipe.passageMm;
  return prepText.gap(needsMm === null ? '' : figureText(showLength(needsMm, context.units)));
}

function blockedReason(blockedBy: NonNullable<SplitBlock['blockedBy']>, { units, doc }: SplitContext): string {
  const { passage, needsMm, what } = blockedBy;
  const clearMm = what === 'width' ? passage.widthMm : (passage.heightMm ?? 0);
  const say = what === 'width' ? prepText.cannotEnter : prepText.tooLow;
  return say(
    passageName(doc, passage.id),
    figureText(showLength(clearMm, units)),
    figureText(showLength(needsMm, units)),
  );
}
