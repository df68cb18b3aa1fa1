/** `type` of the message by which a framed page tells the page around it how tall it is. Given away: it must stay. */
export const heightMessage = "flat-to-formed:height";
