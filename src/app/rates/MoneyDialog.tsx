import { useState, type ReactElement } from 'react';
import css from './Money.module.css';
import { MoneyBusiness } from './MoneyBusiness.tsx';
import { MoneyGoods } from './MoneyGoods.tsx';
import { MoneyMachines } from './MoneyMachines.tsx';
import { MoneyOther } from './MoneyOther.tsx';
import { MoneySection } from './MoneySection.tsx';
import { MoneySite } from './MoneySite.tsx';
import { MoneyTax } from './MoneyTax.tsx';
import { MoneyTravel } from './MoneyTravel.tsx';
import { MoneyWages } from './MoneyWages.tsx';
import { MoneyWaste } from './MoneyWaste.tsx';
import { PriceOf } from './PriceOf.tsx';
import { sectionSays, type Section } from './sectionSays.ts';
import { usePricing } from './usePricing.ts';
import { SentenceFields } from '../estimate/SentenceFields.tsx';
import { Button } from '../parts/Button.tsx';
import { Dialog } from '../parts/Dialog.tsx';
import { useJob, useTakeoff } from '../plan.ts';
import { openPanel } from '../session.ts';
import { today } from '../today.ts';
import type { Json } from '../../model/cell.ts';
import { samplePricing } from '../../takeoff/rates/samplePrices.ts';
import { moneyPage } from '../../words/moneyWords.ts';
import { moneyText } from '../../words/whyWords.ts';

const sections = [
  'wages',
  'machines',
  'goods',
  'travel',
  'waste',
  'site',
  'business',
  'tax',
  'other',
  'words',
] as const satisfies readonly Section[];

/** What this job is priced with, one subject at a time. Nothing on it leaves with the crew. */
export function MoneyDialog(): ReactElement | null {
  const job = useJob();
  const edits = usePricing();
  const { takeoff } = useTakeoff();
  const [open, setOpen] = useState<Section | null>('wages');
  const { pricing, setPricing } = edits;
  if (!job) return null;
  const missing = takeoff?.missingPrices ?? [];
  // What no section asks for: prices that somebody else's work needed.
  const unset = missing.filter((code) => !code.startsWith('day/'));
  // A job that was started before a setting was there is not charged for it behind anybody's back.
  const fresh = Object.entries(samplePricing as Readonly<Record<string, Json>>).filter(
    ([slot]) => (pricing as Readonly<Record<string, unknown>>)[slot] === undefined,
  );
  const fields: Readonly<Record<Section, ReactElement>> = {
    wages: <MoneyWages edits={edits} />,
    machines: <MoneyMachines edits={edits} missing={missing} />,
    goods: <MoneyGoods edits={edits} takeoff={takeoff} />,
    travel: <MoneyTravel edits={edits} />,
    waste: <MoneyWaste edits={edits} />,
    site: <MoneySite edits={edits} />,
    business: <MoneyBusiness edits={edits} />,
    tax: <MoneyTax edits={edits} />,
    other: <MoneyOther edits={edits} />,
    words: <SentenceFields edits={edits} />,
  };
  return (
    <Dialog
      title={moneyText.title}
      open
      wide
      onClose={() => openPanel(null)}
      foot={
        <>
          {pricing.confirmedOn ? (
            <Button onClick={() => setPricing({}, ['confirmedOn'])}>{moneyText.again}</Button>
          ) : (
            <Button kind="main" onClick={() => setPricing({ confirmedOn: today() })}>
              {moneyText.confirm}
            </Button>
          )}
          <Button onClick={() => openPanel(null)}>{moneyText.close}</Button>
        </>
      }
    >
      <p className={css.note}>{pricing.confirmedOn ? moneyText.confirmed(pricing.confirmedOn) : moneyText.intro}</p>
      {fresh.length > 0 && (
        <div className={css.older}>
          <p className={css.note}>{moneyPage.older}</p>
          <Button size="desk" onClick={() => setPricing(Object.fromEntries(fresh))}>
            {moneyPage.askNow}
          </Button>
        </div>
      )}
      {unset.map((code) => (
        <PriceOf key={code} code={code} edits={edits} />
      ))}
      <div>
        {sections.map((section) => (
          <MoneySection
            key={section}
            title={moneyPage.sections[section]}
            says={sectionSays(section, edits, job.currency ?? '')}
            open={open === section}
            onOpen={(shown) => setOpen(shown ? section : null)}
          >
            {fields[section]}
          </MoneySection>
        ))}
      </div>
    </Dialog>
  );
}
