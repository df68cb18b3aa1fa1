import { useTexts } from "../../texts/context.ts";
import { task } from "../../texts/en/task.ts";
import { OpenAssignment } from "./OpenAssignment.tsx";

/** The page without a usable assignment in its address: what it is for, or what is wrong with the link. */
export function NoTask({ damage }: { readonly damage?: string }) {
  const words = useTexts(task);
  return (
    <>
      {damage === undefined ? (
        <>
          <h1>{words.emptyTitle}</h1>
          <p class="lead">{words.emptyLead}</p>
        </>
      ) : (
        <>
          <h1>{words.damagedTitle}</h1>
          <p class="lead">{words.damagedLead}</p>
          <p class="message" role="alert">
            {damage}
          </p>
          <p>{words.damagedHow}</p>
        </>
      )}
      <OpenAssignment label={words.openLink} />
    </>
  );
}
