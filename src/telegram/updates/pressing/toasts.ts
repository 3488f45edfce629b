/** The short notes over the chat that only the one who pressed sees (at most 200 characters). */
export const toasts = {
  old: 'That button is from an older version of me. Please ask again.',
  gone: "I can't see that message any more. Please ask again.",
  notYours: 'Only the person who asked, or an admin, can use these buttons. Ask me yourself with /power.',
  moved: 'The talk has moved on. Ask again, and I show it.',
  held: 'Telegram lets me write here again in a moment. Tap once more then.',
  onlyAdmin: 'Only an admin can set that for the group.',
  noCopy: "I can't show that to you alone here. Ask me yourself with /power.",
} as const;
export type Toast = keyof typeof toasts;
