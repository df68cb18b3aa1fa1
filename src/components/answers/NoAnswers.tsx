import { useTexts } from "../../texts/context.ts";
import { answers } from "../../texts/en/answers.ts";
import { OpenAssignment } from "../task/OpenAssignment.tsx";

/** The page without a usable assignment in its address. */
export function NoAnswers({ damage }: { readonly damage?: string }) {
  const words = useTexts(answers);
  return (
    <>
      <h1>{damage === undefined ? words.title : words.damagedTitle}</h1>
      <p class="lead">{damage === undefined ? words.lead : words.damagedLead}</p>
      {damage !== undefined && (
        <p class="message" role="alert">
          {damage}
        </p>
      )}
      <OpenAssignment label={words.openLink} />
    </>
  );
}
