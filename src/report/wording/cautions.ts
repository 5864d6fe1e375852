/** What can hurt, and what this report does not decide. Shown on every report. */
export const cautions: readonly { readonly title: string; readonly text: string }[] = [
  {
    title: "A warm jar suits harmful bacteria too",
    text: "Milk kept warm is in the range where they grow. Heat the milk first, work clean, use an active starter, and let it sour promptly. A batch that stays sweet and thin is not safe because its temperature was right.",
  },
  {
    title: "When in doubt, throw it out",
    text: "Pink or orange colour, fuzz, or a foul smell: throw the whole batch away. Do not scrape off the top.",
  },
  {
    title: "Ask a clinician first",
    text: "In pregnancy, for infants, with weakened immunity or during illness, ask a clinician before eating live cultures. This report says nothing about health.",
  },
  {
    title: "Selling or serving",
    text: "The local food code and a licensed professional decide what is allowed, not this report.",
  },
  {
    title: "Heat, water, glass and mains",
    text: "Follow the appliance’s own instructions. Using it in other ways can hurt you or spoil it. Hot water scalds, and cold glass cracks in it.",
  },
];
