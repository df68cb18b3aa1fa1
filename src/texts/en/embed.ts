/** What a plan alone says around itself, in the frame of a course page. */
export const embed = {
  title: "Plan a part, alone",
  plan: "Plan a part",
  planAbout: "The plan of a part alone: its form and its sheet.",
  wholePlan: "Plan a part in Flat to Formed",
};
