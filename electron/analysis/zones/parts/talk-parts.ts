import type { PartRow } from "./part-row.ts";

/** Words that hold a part's name and show no part. They stand first, so that no other row claims them. */
export const noParts = [
  {
    phrases:
      "four wheel drive|all wheel drive|rear wheel drive|front wheel drive|two wheel drive|two door|four door|next door|door to door|out the door|quad cab|crew cab|ex cab|extended cab|double cab|single cab|regular cab|three door|five door|oil changes=|front to back|wheelbase|wheel base|long wheelbase|short wheelbase|spare time|spare change|in the road|on the road from|king of the road|seven seater|two seater|five seater|seven seats|wheel to wheel|third wheel|behind the wheel|at the wheel|hit the road|side by side|side to side|on the side|all sides|table of|the ring|first owner|second owner|third owner|first time|second time|first thing|first place|good lane|memory lane|quarter of|three quarter ton|half ton|quarter ton|quarter to|quarter past|quarter inch|a quarter|and a quarter|size of a quarter|sixty plate|number one|plate number|body style|door prize|back door deal",
    zones: {},
  },
] as const satisfies readonly PartRow[] as readonly PartRow[];

/** Papers, greeting and sign-off. */
export const talkParts = [
  {
    phrases:
      "paperwork|bill of sale|build sheet|build ticket|build tag|build book|window sticker|service history|service record|service book|service printout|service invoice|rego papers|rego|club plate|log book|logbook|v5|v5c|owners manual|handbook|history report|vehicle history|documents=|registration document|registration card|registration part|original invoice|shop bill|tire invoice|folder|binder|shoebox|envelope|file of history|history file|heritage certificate|certificate|import papers|port papers|old mots|mots=|mot until|mot to|mot runs|mot history|advisory|advisories=|title application|bonded title|salvage title|rebuilt title|clean title|clear title|lost title|title says|titles clear|titles clean|maintenance record|fleet record|fleet sheet|spec sheet|stack of receipts|stack of bills|protect o plate|broadcast sheet|fender tag|marque letter|restoration album|photo album|auction slip|auction sheet|emissions paper|smog certificate|inspection sheet|habitation check|gas certificate|battery report|state of health|damp reading|nine stamps|five stamps|stamps=|dealer stamp|key card|both keys|two keys|three keys|one key|spare key|build date|payload|gross weight|gross is|gvwr|axle code|paint code|trim code|code on the|recall|carnet|dated letter|three ring binder|clipboard|pink slip|the pink|in both names|both our names|appliance manuals|every receipt|rego till|books=|certificate of registration|inspection in|buff logbook|service at",
    zones: { documents: 1.1 },
  },
  {
    phrases:
      "title|receipt|invoice|bills=|report|vin|vin plate|vin tag|chassis plate|chassis number|data plate|trim tag|body tag|cowl tag|door tag|registration|registered|papers=|paper|keepers=|former keeper|owner|two owner|previous owner|previous owners|mot|tax exempt|road tax|ulez|stamped up|stamped|postcard|service stamp|accident report|no accidents|accident free|clean report|lien|warranty|in my name|signed over|notary|auction|fleet|invoice from|bill from|letter|stamped at|main dealer",
    zones: { documents: 0.6, opening: 0.1 },
  },

  {
    phrases:
      "ring us|drop in|thanks for watching|thank you for watching|thank you for your time|thanks for your time|thanks for looking|bye|bye bye|bye now|goodbye|good bye|ta ra|cheerio|cheers then|so long|take care|have a good one|have a good day|have a nice day|be good|be safe|stay safe|stay warm|god bless|over and out|call us|give us a call|call me|give me a call|ring me|give us a ring|ring first|call the shop|text me|text us|write to me|write to us|email me|message me|hit me up|come see|come and see|come drive it|come get it|come look|come have a look|ask for|ship it|ship anywhere|ship it anywhere|delivery|finance|we finance|financing|take trades|trades=|a trade|part exchange|part ex|swap|reasonable offer|fair number|id listen|no reserve|first come|phone number|website|email|stock number|see you next|see you soon|until next time|keep the light on|in closing|any questions|be glad to|not a junk yard|monday through|monday thru|monday to friday|open sundays|on sundays|open saturday|open seven days|any day but|cuppa|you know where|where to find me|find us|turn it off now|stop now|stop filming|thats a wrap|cut|thats your lot|end of the tour|good day to you|thank you for listening|hooroo|peace|after eight|holler|luncheon|dont quote me",
    zones: { closing: 0.9, opening: 0.15 },
  },
  { phrases: "asking|asking price|price|dollars|pounds|euro|haggle|offer|obo|firm", zones: { closing: 0.25, opening: 0.25 } },
  {
    phrases:
      "hey everybody|hey yall|hey folks|hey guys|hello everyone|hello and welcome|hello|howdy|hi there|hiya|whats up everybody|my name is|welcome|good morning|good afternoon|good evening|morning all|behind the camera|on the camera|holding the camera|flip the camera|today|todays car|what weve got|what we got|what you got here|what we have here|what i have here|got a good one|for you today|ill be showing|walk around|walkaround|before we start|before we even|is it on|is this on|just come in|just in|fresh on the lot|stock|lot number",
    zones: { opening: 0.7 },
  },
] as const satisfies readonly PartRow[] as readonly PartRow[];
