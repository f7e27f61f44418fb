import { Select } from '@base-ui/react/select';
import { useContext, useId, type ReactElement } from 'react';
import css from './Picker.module.css';
import { cx } from '../look/cx.ts';
import { overlayHome } from '../look/overlayHome.ts';
import { Icon } from './Icon.tsx';
import { InDialog } from './inDialog.ts';

export interface PickerOption<T extends string> {
  readonly value: T;
  readonly words: string;
  /** A second line, smaller. */
  readonly more?: string;
}

export interface PickerGroup<T extends string> {
  readonly title: string;
  readonly options: readonly PickerOption<T>[];
}

interface PickerProps<T extends string> {
  readonly label: string;
  readonly value: T | null;
  readonly onPick: (value: T) => void;
  readonly options?: readonly PickerOption<T>[];
  readonly groups?: readonly PickerGroup<T>[];
  /** What stands there while nothing is picked. */
  readonly empty?: string;
  readonly inline?: boolean;
  readonly className?: string | undefined;
}

function Option<T extends string>({ option }: { readonly option: PickerOption<T> }): ReactElement {
  return (
    <Select.Item value={option.value} className={css.option}>
      <Select.ItemText>{option.words}</Select.ItemText>
      {option.more && <span className={css.more}>{option.more}</span>}
    </Select.Item>
  );
}

/** One of many, in a list of words. Few answers that fit side by side are a Choice instead. */
export function Picker<T extends string>({
  label,
  value,
  onPick,
  options,
  groups,
  empty = '',
  inline = false,
  className,
}: PickerProps<T>): ReactElement {
  const labelId = useId();
  const inDialog = useContext(InDialog);
  const all = [...(options ?? []), ...(groups ?? []).flatMap((group) => group.options)];
  const items = all.map((option) => ({ value: option.value, label: option.words }));
  return (
    <div className={cx(css.picker, inline && css.inline, className)}>
      <span id={labelId} className={css.label}>
        {label}
      </span>
      <Select.Root
        items={items}
        value={value}
        onValueChange={(next) => {
          if (next !== null) onPick(next);
        }}
      >
        <Select.Trigger className={css.trigger} aria-labelledby={labelId}>
          <Select.Value className={css.value}>
            {(now: T | null) => all.find((option) => option.value === now)?.words ?? empty}
          </Select.Value>
          <Select.Icon>
            <Icon name="down" small />
          </Select.Icon>
        </Select.Trigger>
        <Select.Portal container={inDialog ? undefined : overlayHome()}>
          <Select.Positioner className={css.positioner} sideOffset={4} alignItemWithTrigger={false}>
            <Select.Popup className={css.popup} aria-labelledby={labelId}>
              <Select.List>
                {options?.map((option) => (
                  <Option key={option.value} option={option} />
                ))}
                {groups?.map((group) => (
                  <Select.Group key={group.title}>
                    <Select.GroupLabel className={css.group}>{group.title}</Select.GroupLabel>
                    {group.options.map((option) => (
                      <Option key={option.value} option={option} />
                    ))}
                  </Select.Group>
                ))}
              </Select.List>
            </Select.Popup>
          </Select.Positioner>
        </Select.Portal>
      </Select.Root>
    </div>
  );
}
