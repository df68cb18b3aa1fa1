/** What every parameter of an assignment begins with; apart, because a page looks for it before it loads anything else. */
export const assignOwner = "assign";
