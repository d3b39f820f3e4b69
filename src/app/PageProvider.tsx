import type { ReactNode } from 'react';
import { HomeProvider } from '#features/home/homeContext';
import type { HomeApp } from '#features/home/store/homeApp';
import { LockSettingsProvider } from '#features/lock/lockContext';
import type { LockSettings } from '#features/lock/store/createLockSettings';
import { MirrorProvider } from '#features/mirror/mirrorContext';
import type { Mirror } from '#features/mirror/store/createMirror';
import { PlanWritingProvider } from '#features/planning/planWritingContext';
import type { PlanWriting } from '#features/planning/store/createPlanWriting';
import { AppProvider } from '#features/review/appContext';
import type { App } from '#features/review/store/createApp';
import { KeptSessionsProvider } from '#features/sessions/keptSessionsContext';
import type { KeptSessions } from '#features/sessions/store/createKeptSessions';
import { BackupProvider } from '#features/sharing/backupContext';
import { ClinicProvider } from '#features/sharing/clinicContext';
import { SendingProvider } from '#features/sharing/sendingContext';
import type { Backup } from '#features/sharing/store/backup/createBackup';
import type { Clinic } from '#features/sharing/store/createClinic';
import type { Sending } from '#features/sharing/store/createSending';
import type { Navigation } from '#shell/navigation/createNavigation';
import { NavigationProvider } from '#shell/navigation/navigationContext';
import type { Tracking } from '#shell/tracking/createTracking';
import { TrackingProvider } from '#shell/tracking/trackingContext';
import { OfflineProvider } from '#features/start/offlineContext';
import type { Offline } from '#features/start/store/createOffline';

/** Every store that screens work with. */
export interface Page {
  navigation: Navigation;
  tracking: Tracking;
  app: App;
  home: HomeApp;
  keptSessions: KeptSessions;
  writing: PlanWriting;
  clinic: Clinic;
  sending: Sending;
  mirror: Mirror;
  backup: Backup;
  lockSettings: LockSettings;
  offline: Offline;
}

export function PageProvider({ page, children }: { page: Page; children: ReactNode }) {
  return (
    <NavigationProvider value={page.navigation}>
      <TrackingProvider value={page.tracking}>
        <AppProvider value={page.app}>
          <HomeProvider value={page.home}>
            <KeptSessionsProvider value={page.keptSessions}>
              <PlanWritingProvider value={page.writing}>
                <ClinicProvider value={page.clinic}>
                  <SendingProvider value={page.sending}>
                    <MirrorProvider value={page.mirror}>
                      <BackupProvider value={page.backup}>
                        <LockSettingsProvider value={page.lockSettings}>
                          <OfflineProvider value={page.offline}>{children}</OfflineProvider>
                        </LockSettingsProvider>
                      </BackupProvider>
                    </MirrorProvider>
                  </SendingProvider>
                </ClinicProvider>
              </PlanWritingProvider>
            </KeptSessionsProvider>
          </HomeProvider>
        </AppProvider>
      </TrackingProvider>
    </NavigationProvider>
  );
}
