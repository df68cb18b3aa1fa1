import { useTexts } from "../../texts/context.ts";
import { display } from "../../texts/en/display.ts";
import { lengths } from "../../texts/en/lengths.ts";
import { idleChoices, type Settings } from "./settings.ts";
import { Choice } from "./switches.tsx";

interface Props {
  readonly settings: Settings;
  change(settings: Settings): void;
  done(): void;
}

/** What can be set on the screen itself; the address for phones is set by the address of this page. */
export function SettingsForm({ settings, change, done }: Props) {
  const texts = useTexts(display);
  const { views } = useTexts(lengths);
  const namesOf = (length: "short" | "long") => ({
    mm: views.mm[length],
    inch: views.inch[length],
    fraction: views.fraction[length],
  });
  const times = [...new Set([...idleChoices, settings.idle])].sort((one, other) => one - other);
  return (
    <div class="settings">
      <h2>{texts.idle}</h2>
      <Choice
        name={texts.idle}
        options={Object.fromEntries(times.map((value) => [`s${value}`, texts.seconds(value)]))}
        chosen={`s${settings.idle}`}
        choose={(key) => change({ ...settings, idle: Number(key.slice(1)) })}
      />
      <h2>{texts.startUnits}</h2>
      <Choice
        name={texts.startUnits}
        options={namesOf("short")}
        spoken={namesOf("long")}
        chosen={settings.units}
        choose={(units) => change({ ...settings, units })}
      />
      <h2>{texts.site}</h2>
      <p class="note">
        {settings.site === "" ? texts.sitePage : settings.site}. {texts.siteHow("/display/?site=https://…")}
      </p>
      <button type="button" class="key words" onClick={done}>
        {texts.done}
      </button>
    </div>
  );
}
