/** One of a few, as large keys side by side. */
export interface ChoiceProps<Key extends string> {
  readonly name: string;
  readonly options: Readonly<Record<Key, string>>;
  /** What is said for an option whose own words are short. */
  readonly spoken?: Readonly<Record<Key, string>>;
  readonly chosen: Key;
  choose(key: Key): void;
}

export function Choice<Key extends string>({ name, options, spoken, chosen, choose }: ChoiceProps<Key>) {
  return (
    <fieldset class="choice" aria-label={name}>
      {(Object.entries(options) as [Key, string][]).map(([key, words]) => (
        <button
          key={key}
          type="button"
          aria-pressed={key === chosen}
          aria-label={spoken && `${words}, ${spoken[key]}`}
          class="option"
          onClick={() => choose(key)}
        >
          {words}
        </button>
      ))}
    </fieldset>
  );
}
