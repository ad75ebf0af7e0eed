import { html, type Markup } from "./html.js";

const cautions = [
  "A loaded line can part without warning, and its end whips back. Stay out of its path, and let nobody stand in a bight.",
  "Keep fingers, hair, drawstrings and jewellery out of blocks and away from lines that run into them.",
  "A line that runs out fast burns skin, through thin gloves as well. Let it go rather than try to stop it with the hand.",
  "Never trust a friction estimate with a person aloft, or with anything that is lifted.",
  "Strength on these pages is an estimate. The rated strength and working load that the maker gives decide.",
  "Class rules, the safety rules of the event and local codes come before anything computed here.",
  "Where a failure of the rig could hurt someone, ask a qualified rigger or engineer before you act on a number from here.",
] as const;

/** The cautions that stand on every report. */
export function cautionList(): Markup {
  return html`<ul class="cautions">
${cautions.map((caution) => html`<li>${caution}</li>\n`)}</ul>
`;
}

/** The same in one paragraph, for pages that only lead to reports. */
export function cautionsInShort(): Markup {
  return html`<p class="cautions">Loaded lines break, whip back and burn hands. The numbers here are estimates for learning and for comparing choices. They never replace the maker’s rated strength, class rules, local codes, or the judgement of a qualified rigger or engineer, and they are not for lifting or for people aloft.</p>
`;
}
