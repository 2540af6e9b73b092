/**
 * Words that put a place elsewhere in time: what will be shown, what was done, what would be. Only close to the move and within its
 * sentence, for narrators say "when", "never" and "been" all the time.
 */

/** Words that rule the verb after them, at a few words' distance. */
const ruling =
  "when (?:we|i|you|they|the|that|hes|shes|your|its)|once (?:we|i|its|the|hes|shes)|until (?:we|i)|before (?:i|we|you)(?! (?:go|get|move|do|finish|wrap|sign|start))|if (?:we|you|i) (?:ever|were|could|had|fold|look inside|dont)|(?:he|she|they) (?:had|used|would|put|went)|used to|you could|you can|could|would(?:nt)?|dont|do not|didnt|couldnt|cannot|wont|not going to|not gonna|aint gonna|shant|cant|every time|somebody|im not|we had (?:it|her)|theyd had|theyd|hed|id had|without|instead of|as (?:he|she|they|you)|theyll|youd|supposed to|takes two|have to|had to|need to|easy to|hard to|room to|able to|ill show(?: you)?(?: that| it| them)?|well (?:see|look at|show you) (?:that|it|them|those)";
/** Words that count only directly before the move. */
const adjacent = "never|been|later|to be|while|who|nobody|he|they|owner|keeper|^to|may be|might be|or";
const after =
  "later|at the body shop|at the auction|which ill show|weve already|we already|ive already|in a (?:minute|bit|second|moment|while)|when (?:were|we|i|its|it)|once we|last (?:week|month|year|night|summer|winter|time)|yesterday|the other day|back in (?:the|nineteen|19|20|two thousand)|every (?:time|day|sunday|weekend|morning)|after (?:this|that|we)|any time|all day";

export const elsewhereBefore = new RegExp(`(?<![a-z0-9])(?:(?:${ruling})(?![a-z0-9])|(?:${adjacent})$)`);
export const elsewhereAfter = new RegExp(`(?<![a-z0-9])(?:${after})(?![a-z0-9])`);
/** Words around a move in which they count, with punctuation and without. */
export const elsewhereReachWords = { punctuated: 5, unpunctuated: 2 } as const;
/** What ends their reach before a move: a sentence's end, or words with which the narrator turns to the next thing. */
export const newTurn =
  /\||(?<![a-z])(?:okay|ok|alright|now|anyway|anyhow|so|(?:ill|lets|let me|well|were gonna|im gonna)(?! (?:show|see|get to)))(?![a-z])/;
