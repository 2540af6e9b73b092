import { CSPProvider } from "@base-ui/react/csp-provider";
import { Tooltip } from "@base-ui/react/tooltip";
import { CallScreen } from "./call/call-screen.tsx";
import type { Client } from "./client/client.ts";
import { ClientContext } from "./client/use-client.ts";
import { HelpProvider } from "./help/help-provider.tsx";
import { HandedFilesGuide } from "./library/files/use-handed-files.ts";
import { LibraryScreen } from "./library/library-screen.tsx";
import { RecordingScreen } from "./recording-screen.tsx";
import { InitialsProvider } from "./shared/initials.tsx";
import { placeOfHash, useHash } from "./shared/place.ts";
import { ZonePatterns } from "./shared/zone-patterns.tsx";

export function App({ client }: { readonly client: Client }) {
  const place = placeOfHash(useHash());
  return (
    // The page's policy allows no <style> elements; what they would hold is in our own style sheets.
    <CSPProvider disableStyleElements>
      <ClientContext value={client}>
        <Tooltip.Provider delay={500}>
          <InitialsProvider>
            <HelpProvider>
              <ZonePatterns />
              <HandedFilesGuide />
              {place.screen === "library" ? <LibraryScreen /> : null}
              {place.screen === "call" ? <CallScreen asked={place.query} compared={place.compared} only={place.only ?? null} /> : null}
              {place.screen === "recording" ? (
                <RecordingScreen
                  key={place.id}
                  recordingId={place.id}
                  desk={place.desk}
                  at={place.at}
                  conflictKey={place.conflict}
                  itemName={place.item}
                />
              ) : null}
            </HelpProvider>
          </InitialsProvider>
        </Tooltip.Provider>
      </ClientContext>
    </CSPProvider>
  );
}
