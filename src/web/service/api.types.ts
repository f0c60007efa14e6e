// Made from the OpenAPI document of the service; not written by hand.
export interface paths {
    "/api/v1/studios": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The studios in which I have a part. */
        get: operations["Studios_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A studio and its settings. */
        get: operations["Studios_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Changes settings. */
        patch: operations["Studios_change"];
        trace?: never;
    };
    "/api/v1/studios/{studioId}/retention-presets": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Published floors for keeping clients' records, of which the studio takes the one that binds it. */
        get: operations["Studios_retentionPresets"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/chain/studios": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Adds a studio to this one's chain. */
        post: operations["Studios_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/people": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Everyone who works or worked in the studio. */
        get: operations["People_list"];
        put?: never;
        /** Adds a person. */
        post: operations["People_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/people/{personId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Changes a person's name, role or state. */
        patch: operations["People_change"];
        trace?: never;
    };
    "/api/v1/set-up": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Whether the first owner has still to come in by the link on the console. */
        get: operations["SignIn_setUpState"];
        put?: never;
        /** Makes the first owner's account by the link on the console, and signs them in. */
        post: operations["SignIn_setUp"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sign-in": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Signs in with name and password. */
        post: operations["SignIn_signIn"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sign-out": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Signs this browser out; does nothing when nobody is signed in. */
        post: operations["SignIn_signOut"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/invitation/look": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** What the holder of an invitation is asked for. */
        post: operations["SignIn_lookAtInvitation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/invitation/accept": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Accepts an invitation: with a new account, a new password, or the account that is signed in here; and signs in. */
        post: operations["SignIn_acceptInvitation"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/me": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Who I am, where, and what I may do there. */
        get: operations["OwnAccount_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/me/sign-ins": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Where I am signed in. */
        get: operations["OwnAccount_signIns"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/me/sign-ins/end": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Signs me out elsewhere: at one browser, or at all but this. */
        post: operations["OwnAccount_end"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/me/password": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Changes my password, or gives me one, and signs me out everywhere else. */
        post: operations["OwnAccount_changePassword"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/me/password/removal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** From now on I sign in by passkey only; signs me out everywhere else. */
        post: operations["OwnAccount_removePassword"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/people/{personId}/invitation": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** A one-time link by which another person comes in, or chooses a new password. At a browser, soon after signing in. */
        post: operations["Access_invite"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/people/{personId}/sign-out": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Signs a person out wherever they are signed in. */
        post: operations["Access_signOut"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/tokens": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The tokens of the studio, the newest first. */
        get: operations["Access_list"];
        put?: never;
        /** A token that acts as you; it is shown in this answer only. At a browser, soon after signing in. */
        post: operations["Access_make"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/tokens/{tokenId}/revocation": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Revokes a token at once. */
        post: operations["Access_revoke"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sign-in/passkey/options": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** What the browser is to ask the authenticator for, to sign in. Its challenge is good for one answer, for 5 minutes. */
        post: operations["Passkeys_signInOptions"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/sign-in/passkey": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Signs in with a passkey. */
        post: operations["Passkeys_signIn"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/me/passkeys": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** My passkeys. */
        get: operations["Passkeys_list"];
        put?: never;
        /** Adds the passkey that the authenticator made. */
        post: operations["Passkeys_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/me/passkeys/options": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** What the browser is to ask an authenticator for, to make me a passkey. Its challenge is good for one answer, for 5 minutes. */
        post: operations["Passkeys_options"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/me/passkeys/{passkeyId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Renames one of my passkeys. */
        patch: operations["Passkeys_rename"];
        trace?: never;
    };
    "/api/v1/me/passkeys/{passkeyId}/removal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Removes one of my passkeys, and signs me out everywhere else. */
        post: operations["Passkeys_remove"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/tablets": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The tablets, the newest first. */
        get: operations["Tablets_list"];
        put?: never;
        /** Makes the browser that asks a tablet of the studio, and signs its enroller out there. */
        post: operations["Tablets_enrol"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/tablets/{tabletId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Renames a tablet. */
        patch: operations["Tablets_rename"];
        trace?: never;
    };
    "/api/v1/studios/{studioId}/tablets/{tabletId}/revocation": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Revokes a tablet: whoever is signed in on it is signed out, and nobody signs in there any more. */
        post: operations["Tablets_revoke"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/badges": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The badges that work. */
        get: operations["Tablets_listBadges"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/people/{personId}/badge": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Prints a badge for a person, as a PDF; the one they had works no more. */
        post: operations["Tablets_printBadge"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/people/{personId}/badge/withdrawal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Withdraws a person's badge, and signs them out where they came in with it. */
        post: operations["Tablets_withdrawBadge"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/tablet": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Which tablet this is, and who may sign in on it by PIN. */
        get: operations["TabletSwitch_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/tablet/switch": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Signs a person in by badge or PIN; whoever was signed in before is signed out. */
        post: operations["TabletSwitch_switch"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/me/studios/{studioId}/pin": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Whether I have one there. */
        get: operations["OwnPin_show"];
        /** Chooses one; the one before works no more. */
        put: operations["OwnPin_choose"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/me/studios/{studioId}/pin/removal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Removes it. */
        post: operations["OwnPin_remove"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alert-destinations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Your own, and the studio's when you may change where alerts go. */
        get: operations["AlertDestinations_seen"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alert-destinations/push-key": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** With what a browser subscribes, so that only this service can send to it. */
        get: operations["AlertDestinations_pushKey"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alert-destinations/{destinationId}/deliveries": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The latest deliveries to one, the newest first. */
        get: operations["AlertDestinations_deliveries"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alert-destinations/mail": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** A mail address: your own, or another's when you may change where alerts go. */
        post: operations["AlertDestinations_addMail"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alert-destinations/webhooks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** A webhook of the studio. Its secret is shown in this answer only. */
        post: operations["AlertDestinations_addWebhook"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alert-destinations/push": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** The browser you ask from. */
        post: operations["AlertDestinations_addPush"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alert-destinations/{destinationId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Pauses or resumes one, gives it another name, or a webhook another severity. */
        patch: operations["AlertDestinations_change"];
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alert-destinations/{destinationId}/rotate-secret": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Gives a webhook a new secret. The old one signs too for one more day. */
        post: operations["AlertDestinations_rotateSecret"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alert-destinations/{destinationId}/remove": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Removes one for good: its address and secrets are wiped, what was promised to it is not sent any more. */
        post: operations["AlertDestinations_remove"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alert-destinations/{destinationId}/test": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Promises a test, which goes the way of all deliveries. */
        post: operations["AlertDestinations_test"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alert-preferences": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** How everybody who works here is told of alerts, and what leads to them. */
        get: operations["AlertPreferences_all"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alert-preferences/own": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** How whoever asks is told of alerts. */
        get: operations["AlertPreferences_own"];
        /** Chooses how one is told of alerts; each for oneself. */
        put: operations["AlertPreferences_set"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alerts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The open alerts, or all of them, or those that are asked for; the latest first. */
        get: operations["Alerts_page"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alerts/sweep": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Judges all conditions now instead of in the morning. */
        post: operations["Alerts_sweepNow"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alerts/{alertId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** An alert with its history. */
        get: operations["Alerts_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alerts/{alertId}/acknowledge": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Notes that somebody has seen to an alert; it closes when its condition ends. */
        post: operations["Alerts_acknowledge"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alerts/{alertId}/put-off": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Puts an alert off until the morning of a day: nobody is reminded of it before, unless it gets worse. */
        post: operations["Alerts_putOff"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alerts/{alertId}/give": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Gives an alert to somebody, who is told so and sees to it. */
        post: operations["Alerts_give"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alerts/{alertId}/notes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Adds a note to the history of an alert. */
        post: operations["Alerts_note"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alerts/{alertId}/close": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Closes an alert by hand. While its condition stands and gets no worse, it does not open anew. */
        post: operations["Alerts_close"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alerts/{alertId}/deliveries": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** How the announcements of an alert were delivered. */
        get: operations["Alerts_deliveries"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alerts/deliveries": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Deliveries of the studio, the latest first: those that could not be sent, unless asked otherwise. */
        get: operations["Deliveries_page"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alerts/deliveries/{deliveryId}/send-again": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Tries anew what could not be sent, under the same delivery id. */
        post: operations["Deliveries_sendAgain"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/handing-on": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Who is told of an urgent alert in what order, and after how many minutes it goes on to the next. */
        get: operations["HandingOn_show"];
        /** Sets the order of people and the minutes. */
        put: operations["HandingOn_set"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/calendar-address": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Whether there is an address at which your calendar program reads; the address itself is not shown again. */
        get: operations["CalendarAddress_own"];
        put?: never;
        /** Makes an address for yourself; the one before ends. At a browser of your own, for it lasts. */
        post: operations["CalendarAddress_make"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/calendar-address/remove": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Ends your address: whoever has it reads nothing more. */
        post: operations["CalendarAddress_remove"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/calendars/{file}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Expiries, touch-up windows and expected deliveries, for a calendar program that was given the secret address. */
        get: operations["Calendars_read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/alerts/live": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What happens to alerts, as it happens: server-sent events. First `connected` with the number of the newest step, then
         *     one `alert` for each new step: `{"sequence", "alertId", "kind", "severity", "event"}`. `missed` when there were too many
         *     since: read the alerts anew. `ended` before the service closes it for good. Going on with `Last-Event-ID` loses nothing.
         */
        get: operations["Live_listen"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/morning-summary": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What the morning summary would say to you now; nothing is kept or sent. */
        get: operations["MorningSummaries_now"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/morning-summaries": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The summaries that were written for you, the latest first. */
        get: operations["MorningSummaries_page"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/makers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The brands whose name and batch code stand on labels. */
        get: operations["Makers_list"];
        put?: never;
        /** Adds a maker. */
        post: operations["Makers_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/makers/{makerId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Renames a maker; what was recorded of past uses keeps the name of that time. */
        patch: operations["Makers_rename"];
        trace?: never;
    };
    "/api/v1/studios/{studioId}/suppliers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Those who sold goods to the studios. */
        get: operations["Suppliers_list"];
        put?: never;
        /** Adds a supplier. */
        post: operations["Suppliers_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/suppliers/{supplierId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Renames a supplier. */
        patch: operations["Suppliers_rename"];
        trace?: never;
    };
    "/api/v1/studios/{studioId}/products": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A page of products, ordered by maker, name and shade. */
        get: operations["Products_list"];
        put?: never;
        /** Adds a pigment, a cartridge (by its notation or field by field) or a consumable. */
        post: operations["Products_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/products/{productId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One product. */
        get: operations["Products_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Changes a product; its kind and the form in which it is kept stay. */
        patch: operations["Products_change"];
        trace?: never;
    };
    "/api/v1/studios/{studioId}/products/{productId}/archive": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Archives a product: it is no longer offered, what is in stock of it stays. */
        post: operations["Products_archive"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/products/{productId}/restore": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Takes a product out of the archive. */
        post: operations["Products_restore"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/products/{productId}/gtins": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Adds a number under which the product is traded: its unit or an outer pack. */
        post: operations["Products_addGtin"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/products/{productId}/gtins/{gtin}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Corrects what a number stands for: its content, or the product it belongs to. */
        patch: operations["Products_correctGtin"];
        trace?: never;
    };
    "/api/v1/studios/{studioId}/configurations": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Cartridges by configuration: those within one stand for each other. */
        get: operations["Configurations_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/configurations/equivalences": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Declares that two cartridge products stand for each other. */
        post: operations["Configurations_declare"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/configurations/equivalences/{equivalenceId}/withdraw": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Withdraws a declaration. */
        post: operations["Configurations_withdraw"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/symbols/read": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Reads a scanned symbol or typed text, and names the product it belongs to. */
        post: operations["Symbols_read"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/blends": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** House blends, the latest first. */
        get: operations["Blends_page"];
        put?: never;
        /** Records that pigments were poured together into a kept container; only where the studio allows house blends. */
        post: operations["Blends_make"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/blends/{blendId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One house blend. */
        get: operations["Blends_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/containers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Bottles and boxes, by place, lot, product or state. */
        get: operations["ContainerList_page"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/containers/pick": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What to take of a product, the first to expire first, and what must be left. */
        get: operations["ContainerList_pick"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/containers/by-label/{code}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The container that carries a label; hyphens, small letters and O for 0 do not matter. */
        get: operations["ContainerList_byLabel"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/containers/{containerId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One bottle or box. */
        get: operations["ContainerList_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/containers/{containerId}/open": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records that a bottle was opened, also against a hold or past a date, with warnings. */
        post: operations["ContainerOperations_open"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/containers/{containerId}/correct-opened-date": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Corrects the day on which a bottle was opened. */
        post: operations["ContainerOperations_correctOpenedDate"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/containers/{containerId}/undo-opening": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Takes back an opening that was recorded by mistake, while nothing was taken of the bottle. */
        post: operations["ContainerOperations_undoOpening"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/containers/{containerId}/finish": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records that a bottle is empty; what the book still shows is written off. */
        post: operations["ContainerOperations_finish"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/containers/{containerId}/discard": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Throws a bottle or a whole box away. */
        post: operations["ContainerOperations_discard"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/containers/{containerId}/waste": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Throws pieces of a box away. */
        post: operations["ContainerOperations_waste"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/containers/{containerId}/return": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Sends a bottle, a box or some of its pieces back to the supplier. */
        post: operations["ContainerOperations_giveBack"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/containers/{containerId}/keep-for-practice": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Keeps what is expired for practice skin; never what is recalled. */
        post: operations["ContainerOperations_keepForPractice"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/containers/{containerId}/count": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Counts a box, or looks whether a bottle is still there; the book follows. */
        post: operations["ContainerOperations_count"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/containers/{containerId}/move": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Moves a bottle, a box or some of its pieces to another place or owner. */
        post: operations["ContainerOperations_move"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/date-thresholds": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A page of the products that have days of warning of their own. */
        get: operations["DateThresholds_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/date-thresholds/{productId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /** Sets the days of warning of one product, before its use-by and before the end of its opened life. */
        put: operations["DateThresholds_set"];
        post?: never;
        /** Removes them, so that the studio's count again; they are answered as they stood. */
        delete: operations["DateThresholds_remove"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/expected-deliveries": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A page of what is expected, or of all that was, by the day it is expected on. */
        get: operations["ExpectedDeliveries_list"];
        put?: never;
        /** Records that something was ordered, and when it is expected. */
        post: operations["ExpectedDeliveries_expect"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/expected-deliveries/{expectedDeliveryId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One of them. */
        get: operations["ExpectedDeliveries_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Changes what is known of it, such as the day. */
        patch: operations["ExpectedDeliveries_change"];
        trace?: never;
    };
    "/api/v1/studios/{studioId}/expected-deliveries/{expectedDeliveryId}/call-off": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** It is not coming any more. */
        post: operations["ExpectedDeliveries_callOff"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/expected-deliveries/{expectedDeliveryId}/received": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** It came. Whoever records the delivery itself names it there instead. */
        post: operations["ExpectedDeliveries_received"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/holds": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The holds that stand, the latest first. */
        get: operations["Holds_page"];
        put?: never;
        /** Puts a lot or a container on hold: it may not be used, nor any blend made of it, until released. */
        post: operations["Holds_place"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/holds/{holdId}/release-requests": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Asks that a recall hold be released, with the reason why. Another person then releases it; where nobody else may, the
         *     same person does, and the request carries a photo.
         */
        post: operations["Holds_askRelease"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/holds/{holdId}/release": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Releases a hold, with the reason why. What is recalled is released by another person than asked for it. */
        post: operations["Holds_release"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/labels": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Prints labels for bottles and boxes, as a PDF. */
        post: operations["Labels_print"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/stock/levels": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Usable, in-date stock by product and by cartridge configuration, with what to take first. */
        get: operations["Levels_show"];
        /** Sets the minimum of a product or of a configuration. */
        put: operations["Levels_set"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/stock/levels/{levelId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /** Removes a minimum, with its alert; it is answered as it stood. */
        delete: operations["Levels_remove"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/lots/{lotId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A lot with its codes, containers, holds, mass balance and a page of its movements. */
        get: operations["LotList_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Corrects the codes or dates of a lot; what stood there before stays findable. */
        patch: operations["LotCorrections_correct"];
        trace?: never;
    };
    "/api/v1/studios/{studioId}/lots": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Lots with what is here of them, the latest first. */
        get: operations["LotList_page"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/movements/{movementId}/reversal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Reverses a movement that was a mistake; both stay visible. */
        post: operations["Movements_reverse"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/opening-stock/preview": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Judges a CSV file of what lies on the shelf at the start, row by row; writes nothing. */
        post: operations["OpeningStock_preview"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/opening-stock": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Takes the file in, whole or not at all; with any fault it is refused with what the preview would say. */
        post: operations["OpeningStock_takeIn"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/photos": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Keeps a picture of a thing, sealed. Take no picture of a client here. */
        post: operations["Photos_keep"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/photos/{photoId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The picture itself, as it came. */
        get: operations["Photos_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/places": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Where stock stands, archived places too. */
        get: operations["Places_list"];
        put?: never;
        /** Adds a place. */
        post: operations["Places_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/places/{placeId}/archive": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Archives a place where nothing stands any more. */
        post: operations["Places_archive"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/deliveries": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A page of what arrived, latest first. */
        get: operations["Receiving_list"];
        put?: never;
        /** Records a delivery, a gift or opening stock; answers with lots, label codes, holds and warnings. */
        post: operations["Receiving_receive"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/deliveries/{deliveryId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One delivery with its lines; lots are shown as they stand now. */
        get: operations["Receiving_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/transfers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A page of transfers from and to this studio, those with anything in transit first. */
        get: operations["Transfers_page"];
        put?: never;
        /** Sends goods to another studio of the chain; they are in transit until one of the two says what became of them. */
        post: operations["Transfers_send"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/transfers/receivers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The studios of the chain that goods can be sent to. */
        get: operations["Transfers_receivers"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/transfers/{transferId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One transfer with its lines and what became of them. */
        get: operations["Transfers_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/transfers/{transferId}/arrival": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records what arrived here, what is damaged and what is missing; held goods arrive on hold. */
        post: operations["Transfers_arrive"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/transfers/{transferId}/withdrawal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Calls back what was sent from here, while nothing of it has arrived; it stands on the shelf again. */
        post: operations["Transfers_withdraw"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/clients": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The clients of the studio, a page at a time. */
        get: operations["Clients_list"];
        put?: never;
        /** Adds a client; the answer holds their new reference. */
        post: operations["Clients_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/clients/search": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Finds clients by their whole name, contact or reference, which is sent in the body. */
        post: operations["Clients_search"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/clients/{clientId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A client. */
        get: operations["Clients_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Changes a client's name, contact or note. */
        patch: operations["Clients_change"];
        trace?: never;
    };
    "/api/v1/studios/{studioId}/clients/{clientId}/accesses": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Who was shown something of the client and when, the latest first. */
        get: operations["ClientRights_accesses"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/clients/{clientId}/erasure": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Every wish for the client's erasure and its answer, the latest first. */
        get: operations["ClientRights_answers"];
        put?: never;
        /**
         * Asks for the client's erasure (GDPR Art. 17). It is carried out, or refused with its grounds (Art. 17(3)); both
         *     answers are recorded. Erased is everything personal, for good; which lots touched the client stays, under the reference.
         */
        post: operations["ClientRights_erase"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/clients/{clientId}/erasure/preview": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What would be answered to a wish for the client's erasure, and why. Changes nothing. */
        get: operations["ClientRights_preview"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/clients/{clientId}/legal-claims": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The legal claims noted for the client, the latest first. */
        get: operations["ClientRights_legalClaims"];
        put?: never;
        /** Notes a legal claim for which the record is needed: until its end is noted the client is not erased. */
        post: operations["ClientRights_noteClaim"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/clients/{clientId}/legal-claims/{claimId}/end": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Notes that a legal claim ended. */
        post: operations["ClientRights_endClaim"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/procedures": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What the studio offers. */
        get: operations["Procedures_list"];
        put?: never;
        /** Adds a procedure. */
        post: operations["Procedures_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/procedures/{procedureId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Changes or archives a procedure. */
        patch: operations["Procedures_change"];
        trace?: never;
    };
    "/api/v1/studios/{studioId}/procedures/{procedureId}/kit-list": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What the procedure needs on the tray: the artist's own list, else the procedure's. */
        get: operations["KitLists_show"];
        /** Makes the list of a procedure, or of one artist for it, or replaces it whole. */
        put: operations["KitLists_put"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Sessions in the order in which they start, by local day, state, artist or client. */
        get: operations["Sessions_list"];
        put?: never;
        /** Plans a session. */
        post: operations["Sessions_plan"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/walk-in": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Begins the session of someone who is here now, and makes the client when they are new. */
        post: operations["Sessions_walkIn"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Everything recorded of a session. */
        get: operations["Sessions_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Changes what was planned, until the session is over. */
        patch: operations["Sessions_change"];
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}/record": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The visit as a written client record asks for it. */
        get: operations["Sessions_record"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}/setup": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Starts the setup of a planned session. */
        post: operations["Sessions_startSetup"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}/cancellation": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Cancels a session; what was poured for it is recorded as wasted. */
        post: operations["Sessions_cancel"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}/non-attendance": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records that the client did not come. */
        post: operations["Sessions_notAttended"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}/tray": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The tray: what lies on it, what changed since, and what the kit lacks. */
        get: operations["Tray_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}/scans": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Shows a symbol, or what was picked, to the tray and is answered admitted, warned, refused or with a question. */
        post: operations["Tray_scan"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}/tray/{lineId}/take-off": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Takes a line off the tray again: unopened, or opened and wasted. */
        post: operations["Tray_takeOff"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}/mixes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The mixes of the session. */
        get: operations["Tray_listMixes"];
        put?: never;
        /** Starts a mix: a single-use cup. */
        post: operations["Tray_startMix"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}/mixes/{mixId}/components": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Adds drops or a volume of a bottle on the tray to a mix, or takes a slip back. */
        post: operations["Tray_addToMix"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}/completion": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Completes the session: books what was used and wasted, and signs it off. */
        post: operations["Tray_complete"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/day-facts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What a device needs to judge today's trays without network: sessions by the client's reference, and what is here. */
        get: operations["DayFacts_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/lots/{lotId}/trace": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Every session and client that a lot touched, directly, in a mix or in a house blend of any depth. */
        get: operations["Trace_ofLot"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/lots/{lotId}/trace.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The whole trace of a lot as CSV, for a spreadsheet. */
        get: operations["Trace_csvOfLot"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/trace": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** The trace of several lots together, each use once. */
        post: operations["Trace_ofLots"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/clients/{clientId}/trace": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Every lot that touched a client, and what house blends among them were made of. */
        get: operations["Trace_ofClient"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}/trace": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Every lot that touched the client in one session, and what house blends among them were made of. */
        get: operations["Trace_ofSession"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}/touch-up": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What the earlier visit leaves to its touch-up: mixes, lots, amounts, and whether they last until then. */
        get: operations["TouchUp_ofSession"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/clients/{clientId}/touch-ups": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The same for every completed first session of a client, the latest first. */
        get: operations["TouchUp_ofClient"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}/healed-result": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records how the colour of a completed session healed. */
        post: operations["TouchUp_recordHealedResult"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/late": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records a session that took place earlier, whatever the state of the stock. */
        post: operations["LateRecords_record"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}/uses": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records uses that a completed session lacks. */
        post: operations["LateRecords_addUses"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}/complications": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Adds complications that were noticed after the session was completed; what was said before stays. */
        post: operations["LateRecords_addComplications"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/sessions/{sessionId}/uses/{useId}/reversal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Reverses a use of a completed session that was recorded by mistake; both stay visible. */
        post: operations["LateRecords_reverse"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/clients/{clientId}/export": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Everything kept of the client, for a client who asks (GDPR Art. 15 and 20). Make sure first that it is they. */
        get: operations["ClientExport_export"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/clients/{clientId}/export.html": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The same as a page to read and print. */
        get: operations["ClientExport_exportPage"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/bookings/preview": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Judges a list of bookings, CSV or iCalendar, row by row; writes nothing but who was looked for. */
        post: operations["Bookings_preview"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/bookings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Takes the list in, whole or not at all; with any fault it is refused with what the preview would say. */
        post: operations["Bookings_takeIn"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/supplier-terms": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A page of all suppliers by name, with their terms where some are set. */
        get: operations["SupplierTerms_list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/supplier-terms/{supplierId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One of them. Where orders are sent is shown to who may place them. */
        get: operations["SupplierTerms_show"];
        /** Sets a supplier's terms whole; where orders are sent stays as it is when it is left out. */
        put: operations["SupplierTerms_set"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/offers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A page of offers by product, of one supplier or of one product when asked. */
        get: operations["Offers_list"];
        put?: never;
        /** Records what a supplier offers. */
        post: operations["Offers_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/offers/{offerId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One of them. */
        get: operations["Offers_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Changes packs, prices or what else is known of it. */
        patch: operations["Offers_change"];
        trace?: never;
    };
    "/api/v1/studios/{studioId}/offers/{offerId}/end": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** It is not offered any more; what was ordered by it keeps it. */
        post: operations["Offers_end"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/training-courses": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A page of courses from a day on, the earliest first. */
        get: operations["TrainingCourses_list"];
        put?: never;
        /** Books a course. */
        post: operations["TrainingCourses_add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/training-courses/{courseId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Changes what is known of it. */
        patch: operations["TrainingCourses_change"];
        trace?: never;
    };
    "/api/v1/studios/{studioId}/training-courses/{courseId}/cancel": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** It does not take place. */
        post: operations["TrainingCourses_cancel"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/planning-settings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** How the studio plans, with what is assumed. */
        get: operations["PlanningSettings_show"];
        /** Sets them whole: what is left out is assumed again. */
        put: operations["PlanningSettings_set"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/planning-settings/items": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A page of the items that are planned otherwise. */
        get: operations["PlanningSettings_listItems"];
        /** Sets how one item is planned, whole. */
        put: operations["PlanningSettings_setItem"];
        post?: never;
        /** It is planned as the studio plans again; it is answered as it stood. */
        delete: operations["PlanningSettings_removeItem"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/planning-settings/artists": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Everybody who treats here, and until when. */
        get: operations["PlanningSettings_listArtists"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/planning-settings/artists/{personId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /** Sets until when somebody treats here. */
        put: operations["PlanningSettings_setArtist"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/purchase-orders": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A page of orders, the highest number first. */
        get: operations["PurchaseOrders_list"];
        put?: never;
        /** Drafts an order by hand. */
        post: operations["PurchaseOrders_draft"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/purchase-orders/{orderId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One order with its lines, and what came of them. */
        get: operations["PurchaseOrders_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Changes a draft: packs, prices, lines added and taken off, the cost of delivery. */
        patch: operations["PurchaseOrders_change"];
        trace?: never;
    };
    "/api/v1/studios/{studioId}/purchase-orders/from-plan": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Drafts what a plan says of the chosen lines, one order for each supplier. */
        post: operations["PurchaseOrders_draftFromPlan"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/purchase-orders/{orderId}/approval": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Approves a draft; it changes no more. Warnings that were not confirmed come back with 409 decision-needed. */
        post: operations["PurchaseOrders_approve"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/purchase-orders/{orderId}/draft-again": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Makes an approved order that was not sent yet a draft again. */
        post: operations["PurchaseOrders_draftAgain"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/purchase-orders/{orderId}/sending": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Sends an approved order. By mail it is sent once the mail server took it, which is tried until it does or is given up;
         *     until then it stays approved, and its mail says how it stands. By hand it is sent now.
         */
        post: operations["PurchaseOrders_send"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/purchase-orders/{orderId}/call-off": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Calls off all of an order, or what has not come of it. */
        post: operations["PurchaseOrders_callOff"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/purchase-orders/{orderId}/closing": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Closes an order with what is missing: nothing more is expected, and the supplier owes it. */
        post: operations["PurchaseOrders_close"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/purchase-orders/{orderId}/order.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The order as a document for the supplier, A4. */
        get: operations["PurchaseOrders_pdf"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/purchase-orders/{orderId}/order.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The lines of the order for a supplier's program or a spreadsheet. */
        get: operations["PurchaseOrders_csv"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/claims": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A page of claims against suppliers, the latest first. */
        get: operations["Claims_page"];
        put?: never;
        /** Opens a claim. */
        post: operations["Claims_open"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/claims/suggestions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What deliveries and closed orders give reason to claim, and nobody opened yet. */
        get: operations["Claims_suggest"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/claims/{claimId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One claim, with its note for those who may place orders. */
        get: operations["Claims_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /** Changes a claim; one that was sent is open again. */
        patch: operations["Claims_change"];
        trace?: never;
    };
    "/api/v1/studios/{studioId}/claims/{claimId}/sent": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** The supplier was told of it. */
        post: operations["Claims_sent"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/claims/{claimId}/settled": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** The supplier made it good. */
        post: operations["Claims_settled"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/claims/{claimId}/dropped": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** It is not asked for any more. */
        post: operations["Claims_dropped"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/claims/{claimId}/claim.txt": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What to write to the supplier, as plain text. */
        get: operations["Claims_text"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/plans/replay": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What had come of it if plans had been followed over the record, beside what was ordered: the latest answer. */
        get: operations["Replays_latest"];
        put?: never;
        /** Has it worked out anew; it waits its turn and runs in the background. It ends like a plan: …/plans/{planId}/cancel. */
        post: operations["Replays_make"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/plans": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Plans, the latest first. */
        get: operations["Plans_list"];
        put?: never;
        /** Has a plan made, or what it would be if something were different: it waits its turn and runs in the background. */
        post: operations["Plans_make"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/plans/latest": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The latest plan that is done; 404 when there is none. */
        get: operations["Plans_latest"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/plans/{planId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** How a plan stands, and what it comes to. */
        get: operations["Plans_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/plans/{planId}/lines": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Its lines, those with the most at stake first. */
        get: operations["Plans_listLines"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/plans/{planId}/lines/{lineNumber}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** One line with all its reasons and figures. */
        get: operations["Plans_line"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/plans/{planId}/cancel": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Ends a plan that waits or runs. */
        post: operations["Plans_cancel"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/plans/{planId}/levels": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Takes the reorder points of a plan for the minima of stock; those set by hand are left unless they are named. */
        post: operations["Plans_takeLevels"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/containers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Every container of the recall that is here, was looked for or was disposed of, by their ids. */
        get: operations["RecallContainers_page"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/containers/{containerId}/findings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records that a container was found, and puts it aside, or that it was not. In a drill nothing is moved. */
        post: operations["RecallContainers_find"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/containers/{containerId}/dispositions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Records that a container, or pieces of a box, went back or were destroyed, with a witness or a photo. */
        post: operations["RecallContainers_dispose"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/balance": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The mass balance of each lot of the recall, and of the house blends in which they are: pieces exactly, volumes as
         *     estimates, with what is not explained.
         */
        get: operations["RecallBalance_page"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/balance/{lotId}/movements": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The movements behind a figure of one lot. */
        get: operations["RecallBalance_movements"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/files": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Reads a file of notices, notice by notice; writes nothing. With a fault in the file it is refused whole. */
        post: operations["NoticeFiles_read"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/readings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Reads a notice and proposes a scope, with the lots it meets here. Nothing is written. */
        post: operations["Recalls_read"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/matches": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** The lots that a scope meets here. Nothing is written. */
        post: operations["Recalls_match"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/notices": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Published notices that met something here and wait for an answer. */
        get: operations["Recalls_waitingNotices"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/notices/{noticeId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A notice, as it came. */
        get: operations["Recalls_notice"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/notices/{noticeId}/dismissal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Notes that a published notice asks for nothing here. */
        post: operations["Recalls_dismissNotice"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The recalls that were answered here, and drills. */
        get: operations["Recalls_page"];
        put?: never;
        /** Opens a recall: its certain lots are held at once, the possible ones by choice, and what may still arrive. */
        post: operations["Recalls_open"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** A recall, with what it was about from the first scope on. */
        get: operations["Recalls_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/lots": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The lots that its scope meets. */
        get: operations["Recalls_lots"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/scopes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Widens or corrects what it is about. A recall that had ended is open again. */
        post: operations["Recalls_amend"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/lots/{lotId}/decisions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Decides whether a lot that is possibly meant is affected. */
        post: operations["Recalls_decide"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/withdrawal": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Withdraws a recall: nothing more is caught, and the release of its holds is asked for. */
        post: operations["Recalls_withdraw"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/exposures": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Every session in which a lot of the recall touched a client, directly, in a mix or in a house blend, or may have. */
        get: operations["Exposures_exposures"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/exposed-clients": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Every client whom a lot of the recall touched, or may have, by reference, with how it stands with telling them. */
        get: operations["Exposures_exposedClients"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/planned-sessions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Sessions in setup or planned that would use a lot of the recall, and what else is in date. */
        get: operations["Exposures_plannedSessions"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/exposures.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** All exposures as CSV, for a spreadsheet: a row for each use and lot of the recall in it. */
        get: operations["Exposures_exposuresAsCsv"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/exposures.xlsx": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The same as an Office Open XML workbook. */
        get: operations["Exposures_exposuresAsSpreadsheet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/contact-list.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Names and contacts of all exposed clients as CSV, for those who tell them. Each look is noted. */
        get: operations["Exposures_contactListAsCsv"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/clients/{clientId}/recalls": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The recalls by which a client was exposed, for certain or possibly. */
        get: operations["Exposures_recallsOfClient"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/recipients": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Who of an audience is to be told, and how it stands with each. */
        get: operations["RecallContacts_listRecipients"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/messages": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Prepares a message for one recipient; one for a client needs the permission to tell clients of recalls. */
        get: operations["RecallContacts_prepareMessage"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/contacts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Attempts to tell people, the latest first. */
        get: operations["RecallContacts_listContacts"];
        put?: never;
        /** Records an attempt to tell somebody; one to tell a client needs the permission to tell clients of recalls. */
        post: operations["RecallContacts_recordContact"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/effectiveness": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** How many of those to be told were told, and which level of effectiveness checks that meets. */
        get: operations["RecallContacts_showEffectiveness"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/readiness": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Whether a recall can be closed, and what stands against it. */
        get: operations["Closing_ready"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/closing": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Closes a recall or a drill. Holds and standing holds of a recall stay in force. */
        post: operations["Closing_close"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/report.json": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The report of a recall as data; of a closed one as it stood at the closing. */
        get: operations["Report_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/report.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The same as a document to hand out. */
        get: operations["Report_print"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/drills": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Drills with their scores, the latest first. */
        get: operations["Drills_list"];
        put?: never;
        /** Rehearses a recall on a chosen lot or one that is drawn: nothing is held and nobody is told. */
        post: operations["Drills_open"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/steps": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The steps of a recall or drill, with what each took, and how a drill stands. */
        get: operations["Drills_show"];
        put?: never;
        /** Notes by the service's clock that a step is done. */
        post: operations["Drills_note"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/drill-schedule": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** How often the studio rehearses a recall, and when it is due. */
        get: operations["Drills_schedule"];
        /** Sets it. */
        put: operations["Drills_setSchedule"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/chain/drill-schedule": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /** Sets it in every studio of the chain, for whoever leads them all. */
        put: operations["Drills_setInChain"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/{recallId}/studios": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** How far each studio of the chain has come with a recall or drill, in numbers. */
        get: operations["ChainProgress_studios"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/recalls/record-quality": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** How well uses are recorded in this studio: what a recall would find. */
        get: operations["ChainProgress_own"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/chain/record-quality": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The same of every studio of the chain. */
        get: operations["ChainProgress_all"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/backups": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** When the last good backup was made, how many are kept, and what failed. */
        get: operations["Backups_show"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/health/live": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Whether the process answers at all. */
        get: operations["Health_live"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/health/ready": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Whether the service can work; 503 when it cannot, and while it ends. A queue that fails keeps nobody from working:
         *     what it is to carry waits in the record.
         */
        get: operations["Health_ready"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/audit-log": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Who did what and when: the entries of the audit log. */
        get: operations["AuditLog_page"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/audit-log/verification": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Holds the studio's record against its audit log and the heads in the backups. Takes its time: minutes for a long record. */
        get: operations["AuditLog_verify"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/audit-log/exports": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** The whole audit log as NDJSON, for whoever will verify it without the service; the export is its last entry. */
        post: operations["AuditLog_export"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/api/v1/studios/{studioId}/retention": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Who may be erased because the record need not be kept any longer, and why the others may not. Changes nothing. */
        get: operations["Retention_list"];
        put?: never;
        /** Erases those who are named. For good: nobody can bring them back. */
        post: operations["Retention_carryOut"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        RetentionView: {
            years: number;
            /** @description The law that asks for it; null: none does, the studio decided so. */
            law: string | null;
        };
        StudioView: {
            id: string;
            name: string;
            /** @description IANA name. */
            timeZone: string;
            /** @description ISO 4217 code. */
            currency: string;
            /** @description Local time of the daily sweep, HH:MM. */
            morning: string;
            useByNearDays: number;
            openedLifeEndingDays: number;
            /** @description ISO 8601 duration taken where a label gives no opened life, shown as an assumption; null: none is taken. */
            assumedOpenedLife: string | null;
            /** @enum {string} */
            houseBlends: "off" | "allowed";
            /**
             * @description Whose rule on keeping clients' records binds the studio; null: not chosen yet, and no client can be erased.
             * @enum {string|null}
             */
            retentionPreset: "own" | "NEHA model code" | "South Dakota" | "Albuquerque" | "Howell" | "Victoria" | null;
            /** @description Years as the studio set them; null: those of the preset. */
            retentionYears: number | null;
            /** @description The law as the studio named it; null: that of the preset, or none. */
            retentionLaw: string | null;
            /** @description What follows from the three. */
            retention: components["schemas"]["RetentionView"] | null;
            /** @description Whether everybody who signs in at a browser of their own needs a passkey. */
            passkeysRequired: boolean;
            /** @description How people reach the studio, as messages about recalls say it; null: nothing is said. */
            contactPoint: string | null;
            version: number;
        };
        RetentionPresetView: {
            /** @enum {string} */
            id: "NEHA model code" | "South Dakota" | "Albuquerque" | "Howell" | "Victoria";
            jurisdiction: string;
            years: number;
            source: string;
            /**
             * @description P: read in the primary text, S: in a secondary source, M: from memory, not verified against the official text.
             * @enum {string}
             */
            howSure: "P" | "S" | "M";
        };
        ChangeStudioDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version this change was made from. */
            version: number;
            name?: string;
            /** @description With "own": the law that asks for it. Null: none does, and a client who asks may be erased earlier. */
            retentionLaw?: string | null;
            /** @description How people reach the studio, as messages about recalls say it: telephone, e-mail, address. Null: nothing. */
            contactPoint?: string | null;
            timeZone?: string;
            currency?: string;
            morning?: string;
            useByNearDays?: number;
            openedLifeEndingDays?: number;
            /** @description Null: no opened life is assumed. */
            assumedOpenedLife?: string | null;
            /** @enum {string} */
            houseBlends?: "off" | "allowed";
            /**
             * @description Whose rule on keeping clients' records binds the studio: one of the list of presets, or "own". Choosing another
             *     one forgets the years and the law set before.
             * @enum {string}
             */
            retentionPreset?: "NEHA model code" | "South Dakota" | "Albuquerque" | "Howell" | "Victoria" | "own";
            /** @description At least those of the preset; null: just those. */
            retentionYears?: number | null;
            /** @description True: a password alone lets nobody into this studio. Whoever says so has a passkey themselves. */
            passkeysRequired?: boolean;
        };
        AddStudioDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            name: string;
            /** @description Left out by an owner, who owns it too. */
            ownerName?: string;
            timeZone: string;
        };
        AddedStudioView: {
            studioId: string;
        };
        PersonView: {
            id: string;
            /** @description Null in the answer to a write, which is kept, and after erasure. */
            name: string | null;
            /** @enum {string} */
            role: "owner" | "manager" | "artist" | "auditor" | "chain manager";
            /** @enum {string} */
            state: "active" | "left";
            /** @description The last local day on which they may do anything; null: no end. */
            until: string | null;
            /** @description Whether they can sign in: they accepted an invitation. */
            hasAccount: boolean;
            version: number;
        };
        AddPersonDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            name: string;
            /**
             * Format: date
             * @description The last local day on which they may do anything; an auditor has one.
             */
            until?: string;
            /** @enum {string} */
            role: "owner" | "manager" | "artist" | "auditor" | "chain manager";
        };
        ChangePersonDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version this change was made from. */
            version: number;
            name?: string;
            /**
             * Format: date
             * @description Null: no end.
             */
            until?: string | null;
            /** @enum {string} */
            role?: "owner" | "manager" | "artist" | "auditor" | "chain manager";
            /** @enum {string} */
            state?: "active" | "left";
        };
        SetUpStateView: {
            /** @description Whether the first owner has still to set things up. */
            isOpen: boolean;
        };
        SetUpDto: {
            /** @description By which they are known when they sign in; case does not matter. */
            signInName: string;
            /** @description What stands behind the # of the link on the console. */
            secret: string;
            studioName: string;
            ownerName: string;
            /** @description IANA name. */
            timeZone: string;
            /** @description At least 12 characters, and not one that is soon guessed. */
            password: string;
        };
        SignInDto: {
            signInName: string;
            password: string;
        };
        LookAtInvitationDto: {
            /** @description What stands behind the # of the link. */
            secret: string;
        };
        InvitationView: {
            /**
             * @description `new account`: a sign-in name and password are chosen; `new password`: only a password.
             * @enum {string}
             */
            asks: "new account" | "new password";
            studioName: string;
            expiresAt: string;
        };
        AcceptInvitationDto: {
            /** @description What stands behind the # of the link. */
            secret: string;
            /** @description For somebody who has no account yet; left out by whoever is signed in, or only needs a new password. */
            signInName?: string;
            /** @description Left out by whoever is signed in already and only joins another studio. */
            password?: string;
        };
        StandingView: {
            studioId: string;
            studioName: string;
            personId: string;
            /** @enum {string} */
            role: "owner" | "manager" | "artist" | "auditor" | "chain manager";
            /** @description What the requester may do there, by role, token or tablet. */
            permissions: ("enrol tablets" | "hand out client data" | "erase clients" | "take in bookings" | "change procedures" | "tell clients of recalls" | "read the audit log" | "see backups" | "see the studio" | "change the studio" | "add studios" | "manage people" | "issue tokens" | "see alerts" | "answer alerts" | "be told of alerts" | "change alert channels" | "read the register" | "change the register" | "read stock" | "read symbols" | "receive stock" | "open containers" | "handle stock" | "correct stock" | "set levels" | "place holds" | "release holds" | "print labels" | "make blends" | "transfer stock" | "take in opening stock" | "read clients" | "change clients" | "read sessions" | "plan sessions" | "work the tray" | "record late" | "trace" | "read plans" | "plan orders" | "place orders" | "read recalls" | "answer recalls" | "find held stock" | "answer recalls of the chain")[];
            /** @description The studio asks for a passkey and the requester signed in without one: nothing may be done there until then. */
            passkeyNeeded: boolean;
            /** @description The last day; null: no end. */
            until: string | null;
        };
        RequesterView: {
            /** @description Null for a token. */
            accountId: string | null;
            /** @description Null for a token, and on a shared tablet. */
            signInName: string | null;
            /** @description Whether the account can sign in by password; null for a token, and on a shared tablet. */
            hasPassword: boolean | null;
            /** @enum {string} */
            method: "badge" | "PIN" | "passkey" | "password" | "one-time link" | "token";
            studios: components["schemas"]["StandingView"][];
        };
        OwnSignInView: {
            id: string;
            /** @enum {string} */
            method: "badge" | "PIN" | "passkey" | "password" | "one-time link";
            /** @description What the browser said of itself. */
            device: string;
            onTablet: boolean;
            createdAt: string;
            /** @description To a few minutes. */
            lastSeenAt: string;
            expiresAt: string;
            /** @description Whether it is the one that asks. */
            isThis: boolean;
        };
        EndSignInsDto: {
            /**
             * Format: uuid
             * @description The one to end; left out: all but this browser's own.
             */
            signInId?: string;
        };
        ChangePasswordDto: {
            /** @description Left out by whoever has none. */
            currentPassword?: string;
            newPassword: string;
        };
        WriteDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
        };
        MadeLinkView: {
            id: string;
            expiresAt: string;
            /** @description Shown in this answer and never again. It works once. */
            link: string;
        };
        SignedOutView: {
            personId: string;
        };
        ApiTokenView: {
            id: string;
            /** @description As whom the token acts. */
            personId: string;
            name: string;
            scopes: ("enrol tablets" | "hand out client data" | "erase clients" | "take in bookings" | "change procedures" | "tell clients of recalls" | "read the audit log" | "see backups" | "see the studio" | "change the studio" | "add studios" | "manage people" | "issue tokens" | "see alerts" | "answer alerts" | "be told of alerts" | "change alert channels" | "read the register" | "change the register" | "read stock" | "read symbols" | "receive stock" | "open containers" | "handle stock" | "correct stock" | "set levels" | "place holds" | "release holds" | "print labels" | "make blends" | "transfer stock" | "take in opening stock" | "read clients" | "change clients" | "read sessions" | "plan sessions" | "work the tray" | "record late" | "trace" | "read plans" | "plan orders" | "place orders" | "read recalls" | "answer recalls" | "find held stock" | "answer recalls of the chain")[];
            createdAt: string;
            expiresAt: string;
            revokedAt: string | null;
            /** @description To the minute; null: never used. */
            lastUsedAt: string | null;
        };
        MakeApiTokenDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description What the token is for. */
            name: string;
            /** @description What the token may be used for: permissions the person has. */
            scopes: ("see the studio" | "change the studio" | "add studios" | "manage people" | "enrol tablets" | "issue tokens" | "see alerts" | "answer alerts" | "be told of alerts" | "change alert channels" | "read the register" | "change the register" | "read stock" | "read symbols" | "receive stock" | "open containers" | "handle stock" | "correct stock" | "set levels" | "place holds" | "release holds" | "print labels" | "make blends" | "transfer stock" | "take in opening stock" | "read clients" | "change clients" | "hand out client data" | "erase clients" | "read sessions" | "plan sessions" | "take in bookings" | "work the tray" | "record late" | "change procedures" | "trace" | "read plans" | "plan orders" | "place orders" | "read recalls" | "answer recalls" | "find held stock" | "tell clients of recalls" | "answer recalls of the chain" | "read the audit log" | "see backups")[];
            /** @description Whole days until it expires. */
            days: number;
        };
        MadeApiTokenView: {
            id: string;
            expiresAt: string;
            /** @description The token itself: shown in this answer and never again. */
            token: string;
        };
        RevokedApiTokenView: {
            id: string;
            revokedAt: string;
        };
        AssertionDto: {
            clientDataJSON: string;
            authenticatorData: string;
            signature: string;
            userHandle?: string;
        };
        AuthenticationResponseDto: {
            response: components["schemas"]["AssertionDto"];
            id: string;
            rawId: string;
            /** @enum {string} */
            type: "public-key";
            /** @enum {string} */
            authenticatorAttachment?: "platform" | "cross-platform";
            clientExtensionResults: Record<string, unknown>;
        };
        PasskeySignInDto: {
            credential: components["schemas"]["AuthenticationResponseDto"];
        };
        PasskeyView: {
            id: string;
            name: string;
            /** @description The host name it belongs to; browsers offer it nowhere else. */
            worksAt: string;
            createdAt: string;
            lastUsedAt: string;
            /** @description When it turned out that two devices hold it: it works no more, and is best removed. */
            suspectedAt: string | null;
            version: number;
        };
        AttestationDto: {
            clientDataJSON: string;
            attestationObject: string;
            authenticatorData?: string;
            transports?: string[];
            publicKeyAlgorithm?: number;
            publicKey?: string;
        };
        RegistrationResponseDto: {
            response: components["schemas"]["AttestationDto"];
            id: string;
            rawId: string;
            /** @enum {string} */
            type: "public-key";
            /** @enum {string} */
            authenticatorAttachment?: "platform" | "cross-platform";
            clientExtensionResults: Record<string, unknown>;
        };
        AddPasskeyDto: {
            /** @description By which its owner knows it, such as the device it is on. */
            name: string;
            credential: components["schemas"]["RegistrationResponseDto"];
        };
        AddedPasskeyView: {
            id: string;
        };
        RenamePasskeyDto: {
            name: string;
            /** @description The version this change was made from. */
            version: number;
        };
        TabletView: {
            id: string;
            name: string;
            createdAt: string;
            revokedAt: string | null;
            /** @description To the minute; null: never used, and in the answer to a write. */
            lastUsedAt: string | null;
            version: number;
        };
        EnrolTabletDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description Where it lies, or what it looks like. */
            name: string;
        };
        RenameTabletDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version this change was made from. */
            version: number;
            name: string;
        };
        BadgeView: {
            id: string;
            personId: string;
            createdAt: string;
            /** @description To the minute; null: never used. */
            lastUsedAt: string | null;
        };
        WithdrawnBadgeView: {
            id: string;
        };
        TabletPersonView: {
            personId: string;
            name: string;
        };
        EnrolledTabletView: {
            id: string;
            name: string;
            studioId: string;
            studioName: string;
            /** @description Those who chose a PIN; others show their badge. */
            people: components["schemas"]["TabletPersonView"][];
        };
        SwitchDto: {
            /** @description What the symbol of the badge holds. */
            badge?: string;
            /** Format: uuid */
            personId?: string;
            pin?: string;
        };
        OwnPinView: {
            /** @description When the PIN was chosen; null: there is none. */
            chosenAt: string | null;
        };
        ChoosePinDto: {
            /** @description 4 to 8 digits, and none of those that are tried first. */
            pin: string;
        };
        AlertDestinationView: {
            id: string;
            /** @enum {string} */
            kind: "mail" | "webhook" | "push";
            /** @description Null for a webhook, which is the studio's. */
            personId: string | null;
            /** @description What people call a webhook or a browser. Null for a mail address, and in the answer to a write, which is kept. */
            name: string | null;
            /**
             * @description The mail address; a webhook's address without its query, which may hold a key; the server of a browser's push service.
             *     Null in the answer to a write.
             */
            address: string | null;
            /** @description SHA-256 in hex of a browser's own address (endpoint), by which it knows itself in the list; null for the others. */
            fingerprint: string | null;
            /**
             * @description Milder alerts are not sent to a webhook.
             * @enum {string}
             */
            minimumSeverity: "notice" | "warning" | "urgent";
            /**
             * @description Stopped: its receiver said that it is gone, or its person left.
             * @enum {string}
             */
            state: "active" | "paused" | "stopped" | "removed";
            stateReason: string | null;
            version: number;
            createdAt: string;
        };
        AlertDestinationPageView: {
            /** @description In the order they were added. */
            items: components["schemas"]["AlertDestinationView"][];
            /** @description Hand it in as `after` for the next page; null: this was the last. */
            next: string | null;
            /** @description Whether mail can be sent: whoever runs the service set a mail server. What is mailed waits until then. */
            mailServerSet: boolean;
        };
        PushKeyView: {
            /** @description What a browser subscribes with (`applicationServerKey`): P-256, 65 bytes, base64url. */
            publicKey: string;
        };
        AlertDeliveryView: {
            id: string;
            /** @enum {string} */
            event: "opened" | "closed" | "worse" | "due again" | "handed on" | "given" | "summary" | "test";
            /** @enum {string} */
            channel: "mail" | "webhook" | "push" | "log";
            /** @description Null: the log of the service. */
            destinationId: string | null;
            /** @enum {string} */
            state: "pending" | "sent" | "undeliverable";
            /** @description Attempts whose end is known. */
            attempts: number;
            /** @description Attempts that were cut off before their end was known: the receiver may have got it as often beside. */
            unknownAttempts: number;
            /** @description When it is tried next, while it is pending. */
            nextAttemptAt: string;
            lastError: string | null;
            createdAt: string;
            settledAt: string | null;
        };
        AddMailDestinationDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: uuid
             * @description Whose address it is; another's only by who may change where alerts go.
             */
            personId: string;
            /** @description Without a name before it, such as desk@studio.example. */
            address: string;
        };
        AddWebhookDestinationDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description What people call it. */
            name: string;
            /** @description An https address; http only to one that whoever runs the service allowed. */
            url: string;
            /**
             * @description Milder alerts are not sent there.
             * @enum {string}
             */
            minimumSeverity: "notice" | "warning" | "urgent";
        };
        MadeWebhookView: {
            destination: components["schemas"]["AlertDestinationView"];
            /** @description `whsec_…`, by which the receiver checks what it gets: shown in this answer and never again. */
            secret: string;
        };
        AddPushDestinationDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description What you call this browser, such as the name of the device. */
            name: string;
            /** @description The browser's public key: a point on P-256, 65 bytes, base64url. */
            p256dh: string;
            /** @description As the browser gives it (PushSubscription.endpoint). */
            endpoint: string;
            /** @description The secret shared with the browser: 16 bytes, base64url. */
            auth: string;
        };
        ChangeAlertDestinationDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            version: number;
            /** @description Of a webhook or a browser. */
            name?: string;
            /**
             * @description Paused: what is promised to it waits. Active again also after it was stopped.
             * @enum {string}
             */
            state?: "active" | "paused";
            /**
             * @description Of a webhook.
             * @enum {string}
             */
            minimumSeverity?: "notice" | "warning" | "urgent";
        };
        RotatedSecretView: {
            id: string;
            version: number;
            /** @description The new one, shown in this answer and never again. */
            secret: string;
            /** @description Until then messages are signed with the old one too. */
            oldValidUntil: string;
        };
        TestedDestinationView: {
            id: string;
            /** @description The delivery that was promised; it goes the way of all others. */
            deliveryId: string;
        };
        AlertPreferenceView: {
            personId: string;
            /**
             * @description Told of each alert from this severity on; what is milder is in the summary of the morning.
             * @enum {string}
             */
            toldFrom: "notice" | "warning" | "urgent" | "never";
            /**
             * @description Of urgent ones: at once, or only when it is their turn in the order of people.
             * @enum {string}
             */
            urgentTurn: "at once" | "in turn";
            /** @enum {string} */
            summary: "never" | "daily";
            /** @description Local time, `HH:MM`; null: the studio's morning. */
            summaryAt: string | null;
            /** @description Local times, `HH:MM`, between which only what is urgent is told; both null: none. */
            quietFrom: string | null;
            quietUntil: string | null;
            /** @description Kinds of alerts this person is not told of, unless they are urgent. */
            kindsLeftOut: string[];
            /** @description True: the person chose nothing, and this is assumed of their role. */
            isDefault: boolean;
            /** @description Null while it is assumed. */
            version: number | null;
        };
        ToldPersonView: {
            personId: string;
            /** @enum {string} */
            role: "owner" | "manager" | "artist" | "auditor" | "chain manager";
            preference: components["schemas"]["AlertPreferenceView"];
            /** @description Destinations that work just now: neither paused nor stopped. */
            mailAddresses: number;
            browsers: number;
        };
        SetAlertPreferenceDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * @description Local time, `HH:MM`; null: the studio's morning.
             * @example 07:00
             */
            summaryAt: string | null;
            /**
             * @description Local times between which only what is urgent is told, also across midnight; both null: none.
             * @example 07:00
             */
            quietFrom: string | null;
            /** @example 07:00 */
            quietUntil: string | null;
            /** @description The version this change was made from; left out when nothing was chosen yet. */
            version?: number;
            /**
             * @description Told of each alert from this severity on; what is milder is in the summary of the morning.
             * @enum {string}
             */
            toldFrom: "notice" | "warning" | "urgent" | "never";
            /**
             * @description Of urgent ones: at once, or only when it is their turn in the order of people.
             * @enum {string}
             */
            urgentTurn: "at once" | "in turn";
            /** @enum {string} */
            summary: "daily" | "never";
            /** @description Kinds of alerts one is not told of, unless they are urgent. */
            kindsLeftOut: string[];
        };
        AlertView: {
            id: string;
            /** @description Such as `low stock`, `use-by near`, `expired on the shelf`. */
            kind: string;
            /** @description What it is about, such as `product`, `lot` or `container`. */
            subjectKind: string;
            subjectId: string;
            /** @enum {string} */
            severity: "notice" | "warning" | "urgent";
            /** @description What a reader needs: names of products, lot codes, dates, quantities. */
            facts: {
                [key: string]: unknown;
            };
            openedAt: string;
            acknowledgedAt: string | null;
            /** @description The person who has seen to it. */
            acknowledgedBy: string | null;
            closedAt: string | null;
            /** @description Nobody is reminded of it before. */
            putOffUntil: string | null;
            /** @description The person who sees to it. */
            givenTo: string | null;
            /** @description Who closed it while its condition stood; null: it closed by itself. */
            closedBy: string | null;
            /** @description True: it tells what happened once, which does not end by itself; whoever acknowledges it closes it. */
            endsWhenAcknowledged: boolean;
        };
        AlertPageView: {
            /** @description The latest first. */
            items: components["schemas"]["AlertView"][];
            /** @description Hand it in as `after` for the next page; null: this was the last. */
            next: string | null;
        };
        SweepView: {
            opened: number;
            refreshed: number;
            closed: number;
        };
        AlertEntryView: {
            /** @description Counts up in the studio without gaps; null for a step before histories were kept, told from the alert itself. */
            sequence: number | null;
            /** @enum {string} */
            event: "opened" | "closed" | "worse" | "due again" | "handed on" | "given" | "milder" | "acknowledged" | "put off" | "noted" | "ended";
            /**
             * @description How bad it was from then on.
             * @enum {string}
             */
            severity: "notice" | "warning" | "urgent";
            /** @description Who did it; null: the service itself. */
            personId: string | null;
            /** @description To whom it was given or handed on. Handed on to null: nobody acknowledged it, and everybody was told once more. */
            toPersonId: string | null;
            /** @description Until when it was put off. */
            until: string | null;
            hasNote: boolean;
            /** @description Null also for who may not see clients, whom a note may name: they see their own. */
            note: string | null;
            recordedAt: string;
        };
        AlertHistoryView: {
            alert: components["schemas"]["AlertView"];
            /** @description The first step first; of more than 200 the latest 200. */
            history: components["schemas"]["AlertEntryView"][];
            /** @description How many steps came before those that are shown. */
            earlierSteps: number;
        };
        PutOffDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date
             * @description It comes back on the morning of this local day of the studio, at most a year ahead.
             */
            until: string;
        };
        GiveDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: uuid
             * @description Who sees to it from now on.
             */
            personId: string;
        };
        NoteDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description What is to be known about it; no client is named here. It is kept sealed. */
            note: string;
        };
        CloseDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description Why it is closed although its condition stands, or what was done; no client is named here. It is kept sealed. */
            note: string;
        };
        DeliveredAlertView: {
            id: string;
            kind: string;
            subjectKind: string;
            subjectId: string;
            /** @enum {string} */
            severity: "notice" | "warning" | "urgent";
            facts: {
                [key: string]: unknown;
            };
            closedAt: string | null;
        };
        DeliveryDestinationView: {
            id: string;
            /** @description Null for a webhook, which is the studio's. */
            personId: string | null;
            /** @enum {string} */
            state: "active" | "paused" | "stopped" | "removed";
            stateReason: string | null;
        };
        PromisedDeliveryView: {
            id: string;
            /** @enum {string} */
            event: "opened" | "closed" | "worse" | "due again" | "handed on" | "given" | "summary" | "test";
            /** @enum {string} */
            channel: "mail" | "webhook" | "push" | "log";
            /** @description Null: the log of the service. */
            destinationId: string | null;
            /** @enum {string} */
            state: "pending" | "sent" | "undeliverable";
            /** @description Attempts whose end is known. */
            attempts: number;
            /** @description Attempts that were cut off before their end was known: the receiver may have got it as often beside. */
            unknownAttempts: number;
            /** @description When it is tried next, while it is pending. */
            nextAttemptAt: string;
            lastError: string | null;
            createdAt: string;
            settledAt: string | null;
            /** @description Null for a summary or a test. */
            alert: components["schemas"]["DeliveredAlertView"] | null;
            /** @description Null: the log of the service. */
            destination: components["schemas"]["DeliveryDestinationView"] | null;
        };
        PromisedDeliveryPageView: {
            /** @description The latest first. */
            items: components["schemas"]["PromisedDeliveryView"][];
            /** @description Hand it in as `after` for the next page; null: this was the last. */
            next: string | null;
        };
        HandingOnView: {
            /** @description Minutes, 5 to 1440; null: it is not handed on. */
            afterMinutes: number | null;
            /** @description Who is told, in this order; empty: managers, then owners, as they came. */
            personIds: string[];
            /** @description The order as it stands today, of those who still work here. */
            order: string[];
            /** @description True: the studio chose nothing, and this is assumed. */
            isDefault: boolean;
            /** @description Null while it is assumed. */
            version: number | null;
            /** @description In the answer to a change: who was handed in, works here no more and is therefore not in the order; else empty. */
            droppedPersonIds: string[];
        };
        SetHandingOnDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version this change was made from; left out when nothing was chosen yet. */
            version?: number;
            /** @description Minutes without anybody acknowledging it, 5 to 1440; null: it is not handed on. */
            afterMinutes: number | null;
            /** @description Who is told, in this order; empty: managers, then owners, as they came. */
            personIds: string[];
        };
        CalendarAddressView: {
            id: string;
            createdAt: string;
        };
        OwnCalendarAddressView: {
            /** @description Null: you have none. */
            address: components["schemas"]["CalendarAddressView"] | null;
        };
        MadeCalendarAddressView: {
            id: string;
            createdAt: string;
            /** @description The address itself: shown in this answer and never again. Whoever has it can read the calendar. */
            url: string;
        };
        RemovedCalendarAddressView: {
            id: string;
            removedAt: string;
        };
        SummaryLineView: {
            alertId: string;
            kind: string;
            subjectKind: string;
            subjectId: string;
            /** @enum {string} */
            severity: "notice" | "warning" | "urgent";
            /** @description As they were when it was written: names of products, lot codes, places, dates, quantities. */
            facts: {
                [key: string]: unknown;
            };
        };
        SummaryPartView: {
            /** @enum {string} */
            name: "order" | "answer today" | "use first" | "discard" | "orders due" | "touch-ups at risk";
            /** @description The most pressing first; at most twenty. */
            lines: components["schemas"]["SummaryLineView"][];
            /** @description How many more there are. */
            more: number;
        };
        SummaryNowView: {
            /** @description The studio's local day. */
            day: string;
            /** @description Only those with something to say. */
            parts: components["schemas"]["SummaryPartView"][];
            /** @description When the next is sent to you; null: none is. */
            nextAt: string | null;
            /**
             * @description Why none is sent to you; null: one is.
             * @enum {string|null}
             */
            whyNone: "not wanted" | "no mail address and no browser that is told" | null;
        };
        SummaryDeliveryView: {
            id: string;
            /** @enum {string} */
            channel: "mail" | "webhook" | "push" | "log";
            destinationId: string | null;
            /** @enum {string} */
            state: "pending" | "sent" | "undeliverable";
            lastError: string | null;
            settledAt: string | null;
        };
        MorningSummaryView: {
            id: string;
            /** @description The studio's local day. */
            day: string;
            createdAt: string;
            /** @description None: there was nothing to say, so nothing was sent. */
            parts: components["schemas"]["SummaryPartView"][];
            deliveries: components["schemas"]["SummaryDeliveryView"][];
        };
        MorningSummaryPageView: {
            /** @description The latest first. */
            items: components["schemas"]["MorningSummaryView"][];
            /** @description Hand it in as `after` for the next page; null: this was the last. */
            next: string | null;
        };
        CompanyView: {
            id: string;
            name: string;
            version: number;
        };
        AddCompanyDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description As it stands on labels or invoices. */
            name: string;
        };
        RenameCompanyDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version this change was made from. */
            version: number;
            name: string;
        };
        GtinView: {
            /** @description 14 digits. */
            gtin: string;
            /** @description Pieces inside: 1 for the single unit. */
            contentCount: number;
            version: number;
        };
        ProductView: {
            id: string;
            /** @enum {string} */
            kind: "pigment" | "cartridge" | "consumable";
            makerId: string;
            makerName: string;
            name: string;
            /**
             * @description A container is opened and used over many sessions; pieces are counted from a box.
             * @enum {string}
             */
            stockForm: "container" | "pieces";
            shade: string | null;
            /** @enum {string|null} */
            pigmentRole: "colour" | "thinner" | null;
            volumeMicrolitres: number | null;
            /** @description ISO 8601 duration; null when the label gives none. */
            openedLife: string | null;
            dropMicrolitres: number | null;
            colourIndexNumbers: string[];
            points: number | null;
            /** @enum {string|null} */
            grouping: "flat" | "round liner" | "round shader" | "magnum" | "stacked magnum" | "curved magnum" | "slope" | "hand blade" | null;
            diameterHundredthsMillimetre: number | null;
            /** @enum {string|null} */
            taper: "long" | "short" | "medium" | "extra long" | null;
            machineFit: string | null;
            /** @enum {string|null} */
            membrane: "yes" | "no" | "unknown" | null;
            /** @description Trade notation of a cartridge whose grouping is known. */
            notation: string | null;
            gtins: components["schemas"]["GtinView"][];
            archived: boolean;
            version: number;
        };
        ProductPageView: {
            items: components["schemas"]["ProductView"][];
            /** @description Give it as `after` for the next page; null on the last. */
            next: string | null;
        };
        AddProductDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description Pigments: the shade's name or number. */
            shade?: string | null;
            /** @description Cartridges: trade notation, such as 1207RL, 0.18/3RL or 3RL. */
            notation?: string | null;
            /** @description Cartridges: which machines the module fits, in the maker's words. */
            machineFit?: string | null;
            /** Format: uuid */
            makerId: string;
            name: string;
            /** @enum {string} */
            kind: "pigment" | "cartridge" | "consumable";
            /** @description Opened life on the label, ISO 8601: P12M, P30D or PT48H. Pigments and consumables; null: the label gives none. */
            openedLife?: string | null;
            /**
             * @description Pigments: a colour, or a thinner dropped into the same cup.
             * @enum {string|null}
             */
            pigmentRole?: "colour" | "thinner" | null;
            /** @description Pigments: labelled volume of one bottle. */
            volumeMicrolitres?: number | null;
            /** @description Pigments: size of a drop, where it is known. */
            dropMicrolitres?: number | null;
            /** @description Pigments: Colour Index numbers of the ingredients, such as 77491 or 15850:1. */
            colourIndexNumbers?: string[];
            /** @description Cartridges: number of needles. */
            points?: number | null;
            /** @enum {string|null} */
            grouping?: "round liner" | "round shader" | "magnum" | "stacked magnum" | "curved magnum" | "flat" | "slope" | "hand blade" | null;
            /** @description Cartridges: needle diameter; 0.30 mm is 30. */
            diameterHundredthsMillimetre?: number | null;
            /** @enum {string|null} */
            taper?: "short" | "medium" | "long" | "extra long" | null;
            /**
             * @description Cartridges: back-flow barrier.
             * @enum {string|null}
             */
            membrane?: "yes" | "no" | "unknown" | null;
        };
        ChangeProductDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description Pigments: the shade's name or number. */
            shade?: string | null;
            /** @description Cartridges: trade notation, such as 1207RL, 0.18/3RL or 3RL. */
            notation?: string | null;
            /** @description Cartridges: which machines the module fits, in the maker's words. */
            machineFit?: string | null;
            /** @description The version this change was made from. */
            version: number;
            /** Format: uuid */
            makerId?: string;
            name?: string;
            /** @description Opened life on the label, ISO 8601: P12M, P30D or PT48H. Pigments and consumables; null: the label gives none. */
            openedLife?: string | null;
            /**
             * @description Pigments: a colour, or a thinner dropped into the same cup.
             * @enum {string|null}
             */
            pigmentRole?: "colour" | "thinner" | null;
            /** @description Pigments: labelled volume of one bottle. */
            volumeMicrolitres?: number | null;
            /** @description Pigments: size of a drop, where it is known. */
            dropMicrolitres?: number | null;
            /** @description Pigments: Colour Index numbers of the ingredients, such as 77491 or 15850:1. */
            colourIndexNumbers?: string[];
            /** @description Cartridges: number of needles. */
            points?: number | null;
            /** @enum {string|null} */
            grouping?: "round liner" | "round shader" | "magnum" | "stacked magnum" | "curved magnum" | "flat" | "slope" | "hand blade" | null;
            /** @description Cartridges: needle diameter; 0.30 mm is 30. */
            diameterHundredthsMillimetre?: number | null;
            /** @enum {string|null} */
            taper?: "short" | "medium" | "long" | "extra long" | null;
            /**
             * @description Cartridges: back-flow barrier.
             * @enum {string|null}
             */
            membrane?: "yes" | "no" | "unknown" | null;
        };
        ArchiveProductDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            version: number;
        };
        AddGtinDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description 8, 12, 13 or 14 digits with their check digit. */
            gtin: string;
            /** @description Pieces inside: 1 for the single unit, more for an outer pack. Left out: 1. */
            contentCount?: number;
        };
        CorrectGtinDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version of the number that this correction was made from. */
            version: number;
            /**
             * Format: uuid
             * @description The product it stands for; left out: it stays.
             */
            productId?: string;
            /** @description Pieces inside; left out: it stays. */
            contentCount?: number;
        };
        PooledProductView: {
            id: string;
            makerName: string;
            name: string;
            notation: string | null;
            machineFit: string | null;
            /** @enum {string|null} */
            membrane: "yes" | "no" | "unknown" | null;
        };
        EquivalenceView: {
            id: string;
            productId: string;
            otherProductId: string;
            reason: string;
            /** @description Instant. */
            declaredAt: string;
            /** @description Instant; null while it holds. */
            withdrawnAt: string | null;
        };
        ConfigurationView: {
            /** @description What is known and equal; empty when too little is known, more than one only where a person declared them equivalent. */
            keys: string[];
            products: components["schemas"]["PooledProductView"][];
            /** @description Whether a person's declaration holds it together, at least in part. */
            declared: boolean;
            equivalences: components["schemas"]["EquivalenceView"][];
        };
        DeclareEquivalenceDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** Format: uuid */
            productId: string;
            /** Format: uuid */
            otherProductId: string;
            /** @description Why the two stand for each other. */
            reason: string;
        };
        WithdrawEquivalenceDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
        };
        ReadSymbolDto: {
            /** @description What the scanner sent or a person typed; separators stay as they are. */
            text: string;
            /** @description What kind of symbol the reader saw, such as ]d2. */
            symbologyIdentifier?: string;
        };
        SymbolElementView: {
            applicationIdentifier: string;
            value: string;
        };
        SymbolFaultView: {
            code: string;
            applicationIdentifier: string | null;
            /** @description Character of the text, counted from 1. */
            position: number;
            seen: string;
            allowed: string;
            message: string;
        };
        SymbolView: {
            /** @enum {string} */
            kind: "own label" | "gs1" | "product only" | "plain text" | "invalid";
            text: string;
            symbologyIdentifier: string | null;
            /** @description The code of a studio's own label. */
            labelCode: string | null;
            /** @description 14 digits. */
            gtin: string | null;
            lotCode: string | null;
            serial: string | null;
            /** @description Last day of use, YYYY-MM-DD. */
            useBy: string | null;
            /** @enum {string|null} */
            useByPrecision: "day" | "month" | null;
            producedOn: string | null;
            elements: components["schemas"]["SymbolElementView"][];
            /** @description Why it cannot be used, or why plain text is not what it looks like. */
            faults: components["schemas"]["SymbolFaultView"][];
            /** @description The registered product of the GTIN. */
            product: components["schemas"]["ProductView"] | null;
            /** @description Pieces in what carries that GTIN. */
            contentCount: number | null;
        };
        BlendParentView: {
            containerId: string;
            lotId: string;
            /** @description An estimate. */
            microlitres: number;
        };
        BlendView: {
            id: string;
            productId: string;
            lotId: string;
            containerId: string;
            /** @description The lot code of the blend. */
            code: string;
            labelCode: string;
            useBy: string | null;
            /** @description An estimate. */
            microlitres: number;
            occurredAt: string;
            parents: components["schemas"]["BlendParentView"][];
        };
        BlendPageView: {
            /** @description The latest first. */
            items: components["schemas"]["BlendView"][];
            /** @description Hand it in as `after` for the next page; null: this was the last. */
            next: string | null;
        };
        BlendParentDto: {
            /** Format: uuid */
            containerId: string;
            /** @description How much went in, or else in drops. */
            microlitres?: number;
            /** @description Turned into microlitres by the drop size of the product. */
            drops?: number;
        };
        MakeBlendDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /**
             * Format: uuid
             * @description The pigment product that the blend is kept as.
             */
            productId: string;
            /** Format: uuid */
            placeId: string;
            /**
             * Format: uuid
             * @description The artist whose it is; left out: the studio's.
             */
            ownerId?: string;
            /** @description Left out: one is made. */
            code?: string;
            /** @description Last day of use, YYYY-MM-DD; left out: as long as the first of the parents lasts. */
            useBy?: string;
            parents: components["schemas"]["BlendParentDto"][];
        };
        ContainerHoldView: {
            holdId: string;
            /** @enum {string} */
            kind: "quarantine" | "recall" | "compliance";
            reason: string;
            /**
             * @description Where it was placed; `parent lot`: on a lot that was blended into this one.
             * @enum {string}
             */
            on: "container" | "lot" | "parent lot";
        };
        ContainerLifeView: {
            /** @enum {string} */
            status: "usable" | "expired" | "open too long" | "no date known";
            /** @description Last usable local day; null when no date is known. */
            lastDay: string | null;
            /** @description Last usable instant, when a life in hours ends it within the last day. */
            lastInstant: string | null;
            /** @description 0 on the last day, negative after it. */
            daysLeft: number | null;
            /** @enum {string} */
            boundBy: "none" | "use-by" | "opened life";
            /** @description Where the opened life ends by itself, also when the use-by is earlier; null while sealed, or when none is known. */
            openedLifeLastDay: string | null;
            /**
             * @description Whether the opened life counted is the label's, assumed by the studio, or told by the one that sent it here opened.
             * @enum {string}
             */
            openedLifeFrom: "none" | "label" | "assumed" | "sending studio";
            /** @description What was seen, what is allowed and what to do, in words. */
            seen: string;
            allowed: string;
            next: string;
        };
        ContainerView: {
            id: string;
            lotId: string;
            productId: string;
            productName: string;
            shade: string | null;
            makerName: string;
            /** @enum {string} */
            kind: "pigment" | "cartridge" | "consumable";
            /** @enum {string} */
            form: "bottle" | "box";
            labelCode: string;
            /** @enum {string} */
            state: "opened" | "sealed" | "finished" | "discarded" | "practice only";
            placeId: string;
            /** @description The artist whose it is; null: the studio's. */
            ownerId: string | null;
            openedAt: string | null;
            receivedAt: string;
            pieces: number;
            /** @description By the book, an estimate. */
            microlitres: number;
            lotCode: string | null;
            /** @enum {string} */
            codeState: "printed" | "none printed" | "unreadable";
            useBy: string | null;
            /** @enum {string} */
            useByPrecision: "none printed" | "day" | "month" | "year";
            held: boolean;
            holds: components["schemas"]["ContainerHoldView"][];
            life: components["schemas"]["ContainerLifeView"];
            version: number;
        };
        ContainerPageView: {
            items: components["schemas"]["ContainerView"][];
            /** @description Hand it in as `after` for the next page; null: this was the last. */
            next: string | null;
        };
        LeftOutContainerView: {
            container: components["schemas"]["ContainerView"];
            reasons: ("finished" | "expired" | "open too long" | "held" | "practice stock")[];
        };
        ContainerPickView: {
            /** @description Opened before sealed, then the first to expire; the one to take at the front. */
            order: components["schemas"]["ContainerView"][];
            leftOut: components["schemas"]["LeftOutContainerView"][];
        };
        ReservedView: {
            /** @description Lines of trays on which it lies. */
            lines: number;
            pieces: number;
        };
        ShownContainerView: {
            id: string;
            lotId: string;
            productId: string;
            productName: string;
            shade: string | null;
            makerName: string;
            /** @enum {string} */
            kind: "pigment" | "cartridge" | "consumable";
            /** @enum {string} */
            form: "bottle" | "box";
            labelCode: string;
            /** @enum {string} */
            state: "opened" | "sealed" | "finished" | "discarded" | "practice only";
            placeId: string;
            /** @description The artist whose it is; null: the studio's. */
            ownerId: string | null;
            openedAt: string | null;
            receivedAt: string;
            pieces: number;
            /** @description By the book, an estimate. */
            microlitres: number;
            lotCode: string | null;
            /** @enum {string} */
            codeState: "printed" | "none printed" | "unreadable";
            useBy: string | null;
            /** @enum {string} */
            useByPrecision: "none printed" | "day" | "month" | "year";
            held: boolean;
            holds: components["schemas"]["ContainerHoldView"][];
            life: components["schemas"]["ContainerLifeView"];
            version: number;
            onTrays: components["schemas"]["ReservedView"];
        };
        OpenContainerDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
        };
        ContainerChangeView: {
            container: components["schemas"]["ContainerView"];
            /** @description The new box that pieces were moved into; else null. */
            newContainer: components["schemas"]["ContainerView"] | null;
            /** @description The movements booked; none when no quantity changed. */
            movementIds: string[];
            /** @description What the person should know; what happened was recorded all the same. */
            warnings: string[];
        };
        CorrectOpenedDateDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it was really opened.
             */
            openedAt: string;
            /** @description Why. Of the thing and never of a client: it is kept in the clear. */
            reason: string;
        };
        UndoOpeningDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description Why. Of the thing and never of a client: it is kept in the clear. */
            reason: string;
        };
        FinishContainerDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
        };
        DiscardContainerDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description Why. Of the thing and never of a client: it is kept in the clear. */
            reason: string;
        };
        WastePiecesDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description Why. Of the thing and never of a client: it is kept in the clear. */
            reason: string;
            pieces: number;
        };
        ReturnContainerDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description Why it goes back to the supplier. Of the thing and never of a client: it is kept in the clear. */
            reason: string;
            /** @description Of a box: so many pieces; left out: all. */
            pieces?: number;
        };
        KeepForPracticeDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /**
             * Format: uuid
             * @description Where it stands from now on; left out: it stays where it is.
             */
            placeId?: string;
        };
        CountContainerDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description For a box: the pieces counted in it. */
            pieces?: number;
            /**
             * @description For a bottle: whether it was found.
             * @enum {string}
             */
            bottle?: "still there" | "missing";
        };
        MoveContainerDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /**
             * Format: uuid
             * @description Left out: it stays where it is.
             */
            placeId?: string;
            /**
             * Format: uuid
             * @description The artist whose it becomes; null: the studio's; left out: as before.
             */
            ownerId?: string | null;
            /** @description Of a box: so many pieces go into a box of their own; left out: the whole. */
            pieces?: number;
        };
        DateThresholdView: {
            productId: string;
            productName: string;
            shade: string | null;
            makerName: string;
            /** @description Sealed stock is near its use-by when this many local days or fewer are left. */
            useByNearDays: number | null;
            /** @description The same for what is open. */
            openedLifeEndingDays: number | null;
            version: number;
        };
        DateThresholdPageView: {
            items: components["schemas"]["DateThresholdView"][];
            /** @description Give it as `after` for the next page; null on the last. */
            next: string | null;
        };
        SetDateThresholdDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version this change was made from; left out when none is set yet. */
            version?: number;
            /** @description Sealed stock is near its use-by when this many days or fewer are left; left out or null: as the studio says. */
            useByNearDays?: number | null;
            /** @description The same for what is open. */
            openedLifeEndingDays?: number | null;
        };
        RemoveDateThresholdDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version that is removed. */
            version: number;
        };
        ExpectedDeliveryView: {
            id: string;
            supplierId: string;
            supplierName: string;
            /** @description The supplier's or the studio's number of the order. */
            reference: string | null;
            /** @description YYYY-MM-DD. */
            orderedOn: string | null;
            /** @description YYYY-MM-DD. */
            expectedOn: string;
            /** @description Still expected although its day is over. */
            late: boolean;
            endedAt: string | null;
            /**
             * @description Null: still expected.
             * @enum {string|null}
             */
            endedAs: "received" | "called off" | null;
            /** @description The delivery it came with, where that is known. */
            deliveryId: string | null;
            version: number;
            createdAt: string;
        };
        ExpectedDeliveryPageView: {
            items: components["schemas"]["ExpectedDeliveryView"][];
            /** @description Give it as `after` for the next page; null on the last. */
            next: string | null;
        };
        ExpectDeliveryDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** Format: uuid */
            supplierId: string;
            /**
             * @description The supplier's or the studio's number of the order. Never of a client: it is kept in the clear, and leaves in alerts,
             *     mail, webhooks and calendars.
             */
            reference?: string | null;
            /** @description YYYY-MM-DD; null: not known. */
            orderedOn?: string | null;
            /** @description The last day on which it is in time, YYYY-MM-DD. */
            expectedOn: string;
        };
        ChangeExpectedDeliveryDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version this change was made from. */
            version: number;
            /** Format: uuid */
            supplierId?: string;
            /** @description As when it was expected: never of a client. */
            reference?: string | null;
            orderedOn?: string | null;
            expectedOn?: string;
        };
        CallOffDeliveryDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
        };
        ExpectedDeliveryReceivedDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: uuid
             * @description The delivery it came with; left out or null: it is not recorded, or nobody knows which.
             */
            deliveryId?: string | null;
        };
        ReleaseRequestView: {
            id: string;
            /** @description Who asks. */
            personId: string | null;
            reason: string;
            /** @description Where nobody else is there to see the thing. */
            photoId: string | null;
            occurredAt: string;
        };
        OpenHoldView: {
            id: string;
            /** @enum {string} */
            kind: "quarantine" | "recall" | "compliance";
            reason: string;
            note: string | null;
            /** @description The held lot, or the lot of the held container. */
            lotId: string;
            /** @description The one container that is held; null: the whole lot. */
            containerId: string | null;
            labelCode: string | null;
            lotCode: string | null;
            productId: string;
            productName: string;
            shade: string | null;
            makerName: string;
            occurredAt: string;
            /** @description The latest request that it be released; null: nobody asked. */
            releaseRequest: components["schemas"]["ReleaseRequestView"] | null;
        };
        OpenHoldPageView: {
            /** @description The latest first. */
            items: components["schemas"]["OpenHoldView"][];
            /** @description Hand it in as `after` for the next page; null: this was the last. */
            next: string | null;
        };
        PlaceHoldDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description What was seen. Of the thing and never of a client: it is kept in the clear. */
            note?: string;
            /**
             * Format: uuid
             * @description The whole lot; either this or a container.
             */
            lotId?: string;
            /**
             * Format: uuid
             * @description One container.
             */
            containerId?: string;
            /** @enum {string} */
            kind: "quarantine" | "recall" | "compliance";
            /** @enum {string} */
            reason: "no lot printed" | "lot unreadable" | "no use-by printed" | "already past" | "broken seal" | "damaged package" | "doubt" | "recall notice" | "label statement missing" | "other";
        };
        HoldView: {
            id: string;
            /** @enum {string} */
            kind: "quarantine" | "recall" | "compliance";
            /** @description Exactly one of lot and container is named. */
            lotId: string | null;
            containerId: string | null;
            reason: string;
            occurredAt: string;
            /** @description Null while it stands. */
            releasedAt: string | null;
            /** @description The latest request that it be released, or the one that the release answered; null: there is none. */
            releaseRequest: components["schemas"]["ReleaseRequestView"] | null;
            /**
             * @description What stood for the second pair of eyes when it was released; null: none was needed, or it stands.
             * @enum {string|null}
             */
            releaseSeenBy: "photo" | "second person" | null;
        };
        AskReleaseDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description Why it may be used again. Of the thing and never of a client: it is kept in the clear. */
            reason: string;
            /**
             * Format: uuid
             * @description A photo of the thing, where nobody else may release holds.
             */
            photoId?: string;
        };
        ReleaseHoldDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description Why it may be used again. Of the thing and never of a client: it is kept in the clear. */
            reason: string;
        };
        PrintLabelsDto: {
            /** @description In the order in which they are printed; an id named twice is printed twice. */
            containerIds: string[];
            /** @enum {string} */
            sheet: "A4 sheet" | "roll";
            /** @description Position of the first label on an A4 sheet that was used in part, 1 to 65, row by row. */
            startAt?: number;
        };
        LotQuantitiesView: {
            usablePieces: number;
            /** @description Those of the usable that have to be used soon, by the days the studio set. */
            endingSoonPieces: number;
            onHandPieces: number;
            /** @description By the book, an estimate. */
            onHandMicrolitres: number;
            heldPieces: number;
            /** @description Past its use-by or open too long, and not held. */
            expiredPieces: number;
            practicePieces: number;
            openedContainers: number;
        };
        LevelView: {
            id: string;
            /** @enum {string} */
            subjectKind: "product" | "configuration";
            subjectId: string;
            minimumPieces: number;
            version: number;
        };
        ToTakeView: {
            containerId: string;
            lotId: string;
            productId: string;
            /** @enum {string} */
            form: "bottle" | "box";
            openedAt: string | null;
            lastDay: string | null;
            pieces: number;
        };
        ProductLevelView: {
            productId: string;
            productName: string;
            shade: string | null;
            makerName: string;
            /** @enum {string} */
            kind: "pigment" | "cartridge" | "consumable";
            quantities: components["schemas"]["LotQuantitiesView"];
            /** @description Of what is on hand: laid out on trays. */
            reservedPieces: number;
            /** @description Null: none is set. */
            level: components["schemas"]["LevelView"] | null;
            /** @description At or below its minimum. */
            low: boolean;
            /** @description What is usable, the first to take at the front; at most ten. */
            toTake: components["schemas"]["ToTakeView"][];
        };
        ConfigurationLevelView: {
            /** @description Keys of the configuration; its minimum may stand under any of them. */
            keys: string[];
            /** @description None when a minimum was set for a configuration that no cartridge has any more. */
            productIds: string[];
            quantities: components["schemas"]["LotQuantitiesView"];
            reservedPieces: number;
            level: components["schemas"]["LevelView"] | null;
            low: boolean;
            toTake: components["schemas"]["ToTakeView"][];
        };
        StockLevelsView: {
            products: components["schemas"]["ProductLevelView"][];
            /** @description Cartridges of different makers that stand for each other, counted together. */
            configurations: components["schemas"]["ConfigurationLevelView"][];
        };
        SetLevelDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description A product id, or a key of a cartridge configuration. */
            subjectId: string;
            /** @description The version this change was made from; left out when no level is set yet. */
            version?: number;
            /** @enum {string} */
            subjectKind: "product" | "configuration";
            /** @description Low at or below this. */
            minimumPieces: number;
        };
        RemoveLevelDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version that is removed. */
            version: number;
        };
        PrintedCodeDto: {
            /** @description As printed, spaces and hyphens inside it too. */
            code: string;
            /** @enum {string} */
            kind: "lot" | "batch" | "other";
        };
        CorrectLotDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version this correction was made from. */
            version: number;
            /** @description What was wrong. Of the thing and never of a client: it is kept in the clear. */
            reason: string;
            /** @description All codes that are printed, in place of those on record. */
            codes?: components["schemas"]["PrintedCodeDto"][];
            /**
             * @description Why there are no codes, in place of codes.
             * @enum {string}
             */
            codeState?: "none printed" | "unreadable";
            /** @description YYYY-MM-DD, YYYY-MM or YYYY as printed; null: none is printed. */
            useBy?: string | null;
            /** @description YYYY-MM-DD; null: none is printed. */
            manufacturedOn?: string | null;
            /**
             * @description The answer to a code that is known with another use-by date: these are two lots all the same.
             * @enum {string}
             */
            sameCodeDecision?: "separate lot";
        };
        PrintedCodeView: {
            /** @enum {string} */
            kind: "lot" | "batch" | "other";
            code: string;
        };
        ReceivedHoldView: {
            id: string;
            /** @enum {string} */
            kind: "quarantine" | "recall" | "compliance";
            reason: string;
            /** @description Exactly one of lot and container is named. */
            lotId: string | null;
            containerId: string | null;
            /** @description False for one that was open on the lot before. */
            placedNow: boolean;
        };
        CorrectedLotView: {
            id: string;
            productId: string;
            code: string | null;
            /** @enum {string} */
            codeState: "printed" | "none printed" | "unreadable";
            codes: components["schemas"]["PrintedCodeView"][];
            /** @description Codes that were on record and were found wrong; a recall still finds the lot by them. */
            supersededCodes: components["schemas"]["PrintedCodeView"][];
            /** @description Last day of use, YYYY-MM-DD; null when none is printed. */
            useBy: string | null;
            /** @enum {string} */
            useByPrecision: "none printed" | "day" | "month" | "year";
            manufacturedOn: string | null;
            version: number;
            /** @description What has to be decided because of the correction. */
            holds: components["schemas"]["ReceivedHoldView"][];
        };
        LotSummaryView: {
            id: string;
            productId: string;
            productName: string;
            shade: string | null;
            makerName: string;
            /** @enum {string} */
            kind: "pigment" | "cartridge" | "consumable";
            /** @description As printed; null when none is printed or it cannot be read. */
            code: string | null;
            /** @enum {string} */
            codeState: "printed" | "none printed" | "unreadable";
            useBy: string | null;
            /** @enum {string} */
            useByPrecision: "none printed" | "day" | "month" | "year";
            manufacturedOn: string | null;
            /** @enum {string} */
            origin: "delivery" | "blend" | "opening stock" | "late record" | "transfer";
            createdAt: string;
            version: number;
            quantities: components["schemas"]["LotQuantitiesView"];
        };
        LotPageView: {
            /** @description The latest first. */
            items: components["schemas"]["LotSummaryView"][];
            /** @description Hand it in as `after` for the next page; null: this was the last. */
            next: string | null;
        };
        LotCodeView: {
            id: string;
            /** @enum {string} */
            kind: "lot" | "batch" | "other";
            code: string;
            recordedAt: string;
            /** @description When it was corrected; it still finds the lot. */
            supersededAt: string | null;
        };
        LotHoldView: {
            id: string;
            /** @enum {string} */
            kind: "quarantine" | "recall" | "compliance";
            reason: string;
            note: string | null;
            /** @description The one container that is held; null: the whole lot. */
            containerId: string | null;
            occurredAt: string;
            releasedAt: string | null;
            releaseReason: string | null;
            /** @description The latest request that it be released; null: nobody asked. */
            releaseRequest: components["schemas"]["ReleaseRequestView"] | null;
        };
        MassBalanceView: {
            /** @enum {string} */
            kind: "received" | "produced" | "transferred in" | "adjusted" | "used" | "blended" | "wasted" | "returned" | "transferred out";
            pieces: number;
            /** @description An estimate. */
            microlitres: number;
        };
        LotDeliveryView: {
            deliveryId: string;
            /** @enum {string} */
            origin: "opening stock" | "purchase" | "gift or sample";
            supplierName: string | null;
            reference: string | null;
            occurredAt: string;
            quantityPieces: number;
        };
        LotBlendView: {
            lotId: string;
            microlitres: number;
        };
        LotTransferView: {
            transferId: string;
            lineId: string;
            /** @description The other studio. */
            studioId: string;
            /** @description The lot in the other studio; null while nothing of it has arrived there. */
            lotId: string | null;
            fromContainerId: string;
            /** @description Null while nothing of it has arrived. */
            intoContainerId: string | null;
            pieces: number;
            /** @description An estimate. */
            microlitres: number;
            /** @description When it arrived here, or left here. */
            occurredAt: string;
        };
        LotSentView: {
            transferId: string;
            lineId: string;
            /** @description The other studio. */
            studioId: string;
            /** @description The lot in the other studio; null while nothing of it has arrived there. */
            lotId: string | null;
            fromContainerId: string;
            /** @description Null while nothing of it has arrived. */
            intoContainerId: string | null;
            pieces: number;
            /** @description An estimate. */
            microlitres: number;
            /** @description When it arrived here, or left here. */
            occurredAt: string;
            /**
             * @description What was lost on the way altogether has arrived with no pieces.
             * @enum {string}
             */
            state: "arrived" | "turned up" | "withdrawn" | "in transit";
        };
        MovementView: {
            id: string;
            containerId: string;
            kind: string;
            /** @description Signed. */
            pieces: number;
            /** @description Signed estimate. */
            microlitres: number;
            /** @description The movement that this one reverses. */
            reversesId: string | null;
            /** @description The movement that reverses this one. */
            reversedById: string | null;
            sessionId: string | null;
            reason: string | null;
            occurredAt: string;
            recordedAt: string;
            personId: string | null;
        };
        LotView: {
            id: string;
            productId: string;
            productName: string;
            shade: string | null;
            makerName: string;
            /** @enum {string} */
            kind: "pigment" | "cartridge" | "consumable";
            /** @description As printed; null when none is printed or it cannot be read. */
            code: string | null;
            /** @enum {string} */
            codeState: "printed" | "none printed" | "unreadable";
            useBy: string | null;
            /** @enum {string} */
            useByPrecision: "none printed" | "day" | "month" | "year";
            manufacturedOn: string | null;
            /** @enum {string} */
            origin: "delivery" | "blend" | "opening stock" | "late record" | "transfer";
            createdAt: string;
            version: number;
            quantities: components["schemas"]["LotQuantitiesView"];
            codes: components["schemas"]["LotCodeView"][];
            /** @description By their ids, at most a thousand. */
            containers: components["schemas"]["ContainerView"][];
            /** @description Hand it in as `containersAfter` for further containers; null: there are none. */
            nextContainer: string | null;
            /** @description Of the lot and of its containers, released ones too. */
            holds: components["schemas"]["LotHoldView"][];
            /** @description Adds up to what is on hand. */
            massBalance: components["schemas"]["MassBalanceView"][];
            /** @description In which it arrived, the latest first; at most two hundred. */
            deliveries: components["schemas"]["LotDeliveryView"][];
            /** @description Lots blended into this one. */
            blendedFrom: components["schemas"]["LotBlendView"][];
            /** @description Blends this lot went into. */
            blendedInto: components["schemas"]["LotBlendView"][];
            /** @description Arrived from other studios of the chain, the latest first. */
            cameFrom: components["schemas"]["LotTransferView"][];
            /** @description Sent to other studios of the chain, the latest first. */
            wentTo: components["schemas"]["LotSentView"][];
            /** @description The latest first. */
            movements: components["schemas"]["MovementView"][];
            /** @description Hand it in as `after` for earlier movements; null: there are none. */
            nextMovement: string | null;
        };
        ReverseMovementDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description Why. Of the thing and never of a client: it is kept in the clear. */
            reason: string;
        };
        JudgeFileDto: {
            text: string;
        };
        OpeningStockCountsView: {
            rows: number;
            faultyRows: number;
            makers: number;
            products: number;
            lots: number;
            containers: number;
        };
        FileFaultView: {
            /** @description Number of the row as a spreadsheet counts them, the header being row 1; null when the file as a whole is meant. */
            row: number | null;
            column: string | null;
            message: string;
        };
        CellFaultView: {
            /** @description Name of the column; null when the row as a whole is meant. */
            column: string | null;
            message: string;
        };
        OpeningStockRowView: {
            /** @description As a spreadsheet counts it: the header is row 1. */
            row: number;
            maker: string | null;
            product: string | null;
            shade: string | null;
            /** @description The code by which its lot is known; null when there is none. */
            code: string | null;
            /** @description Last day of use, YYYY-MM-DD; null when none is printed. */
            useBy: string | null;
            pieces: number;
            /** @description Bottles and boxes, each of which gets a label. */
            containers: number;
            /** @description Null: sealed. */
            openedOn: string | null;
            /** @description Estimated to be left in each opened bottle; null: as labelled. */
            remainingMicrolitres: number | null;
            place: string | null;
            /** @description What it would make or join; nothing while it has faults. */
            effects: ("new lot" | "new maker" | "new product" | "new GTIN" | "joins a lot" | "corrects a lot")[];
            /** @description Why it would be put aside until somebody decides. */
            setAside: ("no lot printed" | "lot unreadable" | "no use-by printed" | "already past")[];
            faults: components["schemas"]["CellFaultView"][];
            warnings: string[];
        };
        OpeningStockPreviewView: {
            /** @description Whether it can be taken in as it is: there is no fault anywhere. */
            usable: boolean;
            counts: components["schemas"]["OpeningStockCountsView"];
            /** @description Faults of the file as a whole or of its header; then no row was judged. */
            faults: components["schemas"]["FileFaultView"][];
            warnings: string[];
            rows: components["schemas"]["OpeningStockRowView"][];
        };
        TakeInFileDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            text: string;
        };
        TakenInStockRowView: {
            row: number;
            lotId: string;
            /** @description Whether this file brought its first goods. */
            newLot: boolean;
            containerIds: string[];
            setAside: string[];
            warnings: string[];
        };
        TakenInStockView: {
            deliveryId: string;
            recordedAt: string;
            counts: components["schemas"]["OpeningStockCountsView"];
            rows: components["schemas"]["TakenInStockRowView"][];
        };
        KeepPhotoDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @enum {string} */
            mediaType: "image/jpeg" | "image/png";
            /**
             * Format: base64
             * @description The file in base64, at most 700,000 bytes before that. It is kept as it came, with all that a camera wrote into it.
             */
            content: string;
        };
        PhotoView: {
            id: string;
            /** @enum {string} */
            mediaType: "image/jpeg" | "image/png";
            bytes: number;
            /** @description SHA-256 of the file, hexadecimal. */
            digest: string;
            occurredAt: string;
        };
        PlaceView: {
            id: string;
            name: string;
            /** @enum {string} */
            kind: "shelf" | "treatment room" | "travelling case" | "practice shelf" | "set aside";
            archived: boolean;
        };
        AddPlaceDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            name: string;
            /** @enum {string} */
            kind: "shelf" | "treatment room" | "travelling case" | "practice shelf" | "set aside";
        };
        ArchivePlaceDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
        };
        SymbolDto: {
            /** @description What the scanner sent or a person typed; separators stay as they are. */
            text: string;
            /** @description What kind of symbol the reader saw, such as ]d2. */
            symbologyIdentifier?: string;
        };
        FaultyPiecesDto: {
            /** @enum {string} */
            kind: "broken seal" | "damaged package";
            /** @description How many pieces; a piece with two faults is named under one. */
            pieces: number;
        };
        DeliveryLineDto: {
            /**
             * Format: uuid
             * @description Which product; may be left out when a symbol names it.
             */
            productId?: string;
            /**
             * @description The line of an order that this answers; null: none. Left out: where the expected delivery is that of a purchase order,
             *     its line of the same product that still waits.
             */
            orderLineId?: string | null;
            /** Format: uuid */
            placeId: string;
            /**
             * Format: uuid
             * @description The artist whose it is; null: the studio's.
             */
            ownerId?: string | null;
            /**
             * Format: date-time
             * @description Bottles that come opened: when they were opened, an instant.
             */
            openedAt?: string | null;
            symbol?: components["schemas"]["SymbolDto"];
            /** @description Every code printed for the lot; may be left out when the symbol holds it. */
            codes?: components["schemas"]["PrintedCodeDto"][];
            /**
             * @description Why there are no codes.
             * @enum {string}
             */
            codeState?: "printed" | "none printed" | "unreadable";
            /** @description YYYY-MM-DD, YYYY-MM or YYYY as printed; null: none is printed; may be left out when the symbol holds it. */
            useBy?: string | null;
            /** @description YYYY-MM-DD. */
            manufacturedOn?: string | null;
            /** @description How many, of what the symbol stands for: a scanned pack counts with its content. Else pieces. */
            quantity: number;
            /** @description Pieces in each of what is counted, where no symbol is given that tells it; each is put away by itself. Left out: 1. */
            piecesEach?: number;
            /** @description Cost of one piece in minor units of the studio's currency; null: unknown. */
            unitCostMinor?: number | null;
            faults?: components["schemas"]["FaultyPiecesDto"][];
            /** @description Pigments that come opened: what is estimated to be left in each bottle. Left out: what the label says. */
            remainingMicrolitres?: number;
            /**
             * @description The answer to a code that is known with another use-by date.
             * @enum {string}
             */
            sameCodeDecision?: "separate lot" | "keep recorded date" | "correct recorded date";
        };
        ReceiveDeliveryDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /**
             * Format: uuid
             * @description Whoever sold it; purchases only.
             */
            supplierId?: string | null;
            /** @description Number on the delivery note or invoice. */
            reference?: string | null;
            /**
             * Format: uuid
             * @description The expected delivery that this is; it is expected no longer. What is missing of a purchase order behind it is expected
             *     anew, also when this answers no line of it.
             */
            expectedDeliveryId?: string | null;
            /** @enum {string} */
            origin: "purchase" | "gift or sample" | "opening stock";
            /** @description YYYY-MM-DD; purchases only. */
            orderedOn?: string | null;
            lines: components["schemas"]["DeliveryLineDto"][];
        };
        ReceivedLotView: {
            id: string;
            productId: string;
            /** @description The code by which the lot is known; null when none is printed or it cannot be read. */
            code: string | null;
            /** @enum {string} */
            codeState: "printed" | "none printed" | "unreadable";
            codes: components["schemas"]["PrintedCodeView"][];
            /** @description Last day of use, YYYY-MM-DD; null when none is printed. */
            useBy: string | null;
            /** @enum {string} */
            useByPrecision: "none printed" | "day" | "month" | "year";
            manufacturedOn: string | null;
            version: number;
            /** @description Whether this delivery brought its first goods. */
            isNew: boolean;
        };
        ReceivedContainerView: {
            id: string;
            /** @description Lotward's own code, 12 characters, to be printed on its label. */
            labelCode: string;
            /** @enum {string} */
            form: "bottle" | "box";
            /** @enum {string} */
            state: "opened" | "sealed";
            pieces: number;
            /** @description Labelled volume, or what is left in one that came opened; 0 for what is counted in pieces only. */
            microlitres: number;
            placeId: string;
            ownerId: string | null;
        };
        ReceivedLineView: {
            /** @description From 1. */
            lineNumber: number;
            quantityPieces: number;
            unitCostMinor: number | null;
            currency: string | null;
            orderLineId: string | null;
            lot: components["schemas"]["ReceivedLotView"];
            containers: components["schemas"]["ReceivedContainerView"][];
            /** @description What has to be decided before these goods may be used. */
            holds: components["schemas"]["ReceivedHoldView"][];
            warnings: string[];
        };
        ReceiptView: {
            id: string;
            /** @enum {string} */
            origin: "opening stock" | "purchase" | "gift or sample";
            supplierId: string | null;
            orderedOn: string | null;
            reference: string | null;
            occurredAt: string;
            recordedAt: string;
            lines: components["schemas"]["ReceivedLineView"][];
        };
        DeliveryLineView: {
            id: string;
            /** @description From 1. */
            lineNumber: number;
            productId: string;
            makerName: string;
            productName: string;
            shade: string | null;
            lotId: string;
            code: string | null;
            useBy: string | null;
            quantityPieces: number;
            unitCostMinor: number | null;
            currency: string | null;
            orderLineId: string | null;
        };
        DeliveryView: {
            id: string;
            /** @enum {string} */
            origin: "opening stock" | "purchase" | "gift or sample";
            supplierId: string | null;
            supplierName: string | null;
            orderedOn: string | null;
            reference: string | null;
            occurredAt: string;
            recordedAt: string;
            personId: string | null;
            /** @description Lots as they stand now. */
            lines: components["schemas"]["DeliveryLineView"][];
        };
        DeliveryPageView: {
            items: components["schemas"]["DeliveryView"][];
            /** @description Give it as `after` for the next page; null on the last. */
            next: string | null;
        };
        SentLineDto: {
            /** Format: uuid */
            containerId: string;
            /** @description Of a box: so many pieces; left out: the whole. */
            pieces?: number;
        };
        SendTransferDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /**
             * Format: uuid
             * @description Another studio of the same chain.
             */
            receiverId: string;
            /** @description Why it is sent; both studios read it. Never of a client: it is kept in the clear. */
            reason: string;
            lines: components["schemas"]["SentLineDto"][];
        };
        ToldHoldView: {
            /** @enum {string} */
            kind: "quarantine" | "recall" | "compliance";
            reason: string;
            /**
             * @description On the lot there, or only on the container it was in.
             * @enum {string}
             */
            on: "container" | "lot";
        };
        QuantityView: {
            pieces: number;
            /** @description An estimate. */
            microlitres: number;
        };
        LineBalanceView: {
            sent: components["schemas"]["QuantityView"];
            inTransit: components["schemas"]["QuantityView"];
            arrived: components["schemas"]["QuantityView"];
            lost: components["schemas"]["QuantityView"];
            /** @description Called back by the sender. */
            back: components["schemas"]["QuantityView"];
        };
        TransferGoodsView: {
            lotId: string;
            containerId: string;
            pieces: number;
            microlitres: number;
            /** @description Pieces beyond what was sent. */
            surplusPieces: number;
            /**
             * @description What they were put aside for.
             * @enum {string|null}
             */
            fault: "broken seal" | "damaged package" | null;
        };
        TransferOutcomeView: {
            /** @enum {string} */
            kind: "arrived" | "turned up" | "withdrawn";
            occurredAt: string;
            recordedAt: string;
            reason: string | null;
            /** @description Sent and not arrived; negative for what turned up. */
            lost: components["schemas"]["QuantityView"];
            goods: components["schemas"]["TransferGoodsView"][];
        };
        TransferLineView: {
            id: string;
            lineNumber: number;
            productId: string;
            productName: string;
            shade: string | null;
            makerName: string;
            /** @enum {string} */
            form: "bottle" | "box";
            /**
             * @description As it was sent.
             * @enum {string}
             */
            state: "opened" | "sealed" | "practice only";
            /** @description In the sending studio. */
            lotId: string;
            containerId: string;
            /** @description Lotward's label of the sending studio, which may still stick on it. */
            labelCode: string;
            code: string | null;
            /** @enum {string} */
            codeState: "printed" | "none printed" | "unreadable";
            useBy: string | null;
            /** @enum {string} */
            useByPrecision: "none printed" | "day" | "month" | "year";
            manufacturedOn: string | null;
            openedAt: string | null;
            /** @description The end of its opened life in the sending studio: a day, or an instant; it lasts no longer anywhere. */
            usableThrough: string | null;
            /** @description What stands in the sending studio by now; it arrives on hold. */
            holds: components["schemas"]["ToldHoldView"][];
            /**
             * @description What became of it so far.
             * @enum {string}
             */
            lineState: "arrived" | "withdrawn" | "in transit" | "lost";
            balance: components["schemas"]["LineBalanceView"];
            outcomes: components["schemas"]["TransferOutcomeView"][];
        };
        TransferView: {
            lines: components["schemas"]["TransferLineView"][];
            id: string;
            /** @enum {string} */
            direction: "in" | "out";
            senderId: string;
            receiverId: string;
            reason: string;
            occurredAt: string;
            recordedAt: string;
            lineCount: number;
            /** @description Lines whose goods are on neither shelf; the transfer is open while there are any. */
            linesInTransit: number;
        };
        TransferSummaryView: {
            id: string;
            /** @enum {string} */
            direction: "in" | "out";
            senderId: string;
            receiverId: string;
            reason: string;
            occurredAt: string;
            recordedAt: string;
            lineCount: number;
            /** @description Lines whose goods are on neither shelf; the transfer is open while there are any. */
            linesInTransit: number;
        };
        TransferPageView: {
            /** @description Those with anything in transit first, then the latest first. */
            items: components["schemas"]["TransferSummaryView"][];
            /** @description Hand it in as `after` for the next page; null: this was the last. */
            next: string | null;
        };
        ReceivingStudioView: {
            id: string;
            name: string;
        };
        ArrivedLineDto: {
            /**
             * Format: uuid
             * @description The line of the transfer.
             */
            lineId: string;
            /**
             * Format: uuid
             * @description Where it stands from now on; may be left out only when nothing is here.
             */
            placeId?: string;
            /**
             * Format: uuid
             * @description The artist whose it becomes; null or left out: the studio's.
             */
            ownerId?: string | null;
            /** @description Pieces that are here, damaged ones too; a bottle is one. What is missing of those sent is recorded as lost. */
            pieces: number;
            /** @description Of these pieces, those to be put aside. */
            faults?: components["schemas"]["FaultyPiecesDto"][];
            /** @description True: these pieces were recorded as lost and have turned up. */
            turnedUp?: boolean;
        };
        RecordArrivalDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description What is to be said of it, such as how it was damaged; both studios read it. Never of a client: it is kept in the clear. */
            reason?: string;
            /** @description Lines that are not named stay in transit. */
            lines: components["schemas"]["ArrivedLineDto"][];
        };
        ArrivalView: {
            transfer: components["schemas"]["TransferView"];
            /** @description New here, each with a label of its own. */
            containers: components["schemas"]["ContainerView"][];
            /** @description What the person should know; what arrived was recorded all the same. */
            warnings: string[];
        };
        WithdrawTransferDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description Why it is called back; both studios read it. Never of a client: it is kept in the clear. */
            reason: string;
            /**
             * Format: uuid
             * @description Where what went whole stands from now on; left out: where it stood.
             */
            placeId?: string;
            /** @description The lines that are back on the shelf; left out: the whole transfer. */
            lineIds?: string[];
        };
        ClientView: {
            id: string;
            /** @description A short code that says nothing of the person. */
            reference: string;
            /** @description Null after erasure and for whoever is not shown clients, as are contact and note. */
            name: string | null;
            contact: string | null;
            note: string | null;
            erasedAt: string | null;
            createdAt: string;
            version: number;
        };
        ClientPageView: {
            items: components["schemas"]["ClientView"][];
            /** @description Give it as `after` for the next page; null: this is the last. */
            next: string | null;
        };
        SearchClientsDto: {
            /** @description The whole name, contact or reference; capitals and spaces do not matter. */
            text: string;
        };
        AddClientDto: {
            name: string;
            /** @description How to reach them: a telephone number or a mail address. */
            contact?: string | null;
            note?: string | null;
            /**
             * Format: uuid
             * @description Made by the client of the API, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
        };
        WrittenClientView: {
            id: string;
            reference: string;
            version: number;
        };
        ChangeClientDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version this change was made from. */
            version: number;
            name?: string;
            /** @description Null takes it away. */
            contact?: string | null;
            /** @description Null takes it away. */
            note?: string | null;
        };
        ClientAccessView: {
            id: string;
            personId: string | null;
            personName: string | null;
            /**
             * @description What was shown: their own page, a list or search that named them, one of their sessions, an export.
             * @enum {string}
             */
            what: "recall" | "touch-up" | "client" | "session" | "client list" | "client search" | "session list" | "session record" | "client trace" | "session trace" | "legal claims" | "export";
            accessedAt: string;
        };
        ClientAccessPageView: {
            items: components["schemas"]["ClientAccessView"][];
            /** @description Give it as `after` for the next page; null: this is the last. */
            next: string | null;
        };
        AskErasureDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * @description Why: a ground of GDPR Art. 17(1), or "retention over" on the studio's own motion.
             * @enum {string}
             */
            ground: "no longer necessary" | "consent withdrawn" | "objection" | "unlawful processing" | "erasure required by law" | "retention over";
            /** @description What is to be said against what stands against it, where the law leaves that to the studio. */
            overrides?: ("no legal obligation applies" | "the client was told of it")[];
        };
        ErasureObstacleView: {
            /** @enum {string} */
            kind: "retention not chosen" | "legal obligation" | "own retention" | "held lot" | "legal claim";
            /** @description The point of GDPR Art. 17(3) that allows a refusal; null: the studio's own rule. */
            article: string | null;
            /** @description What was seen, and what to do. */
            message: string;
            /** @description Last local day, for what ends by itself. */
            keptThrough: string | null;
            /** @description The lots on hold. */
            lotIds: string[];
            /**
             * @description What was said against it, so that it no longer stands; null: it stands.
             * @enum {string|null}
             */
            overriddenBy: "no legal obligation applies" | "the client was told of it" | null;
        };
        ErasureAnswerView: {
            id: string;
            clientId: string;
            clientReference: string;
            /** @enum {string} */
            ground: "no longer necessary" | "consent withdrawn" | "objection" | "unlawful processing" | "erasure required by law" | "retention over";
            /** @enum {string} */
            answer: "refused" | "erased";
            /** @description All that was found, also what was overridden. */
            obstacles: components["schemas"]["ErasureObstacleView"][];
            recordedAt: string;
            personId: string | null;
        };
        ErasurePreviewView: {
            clientId: string;
            /** @enum {string} */
            ground: "no longer necessary" | "consent withdrawn" | "objection" | "unlawful processing" | "erasure required by law" | "retention over";
            /** @enum {string} */
            answer: "refused" | "erased";
            obstacles: components["schemas"]["ErasureObstacleView"][];
            /** @description Visits planned or under way: completed or cancelled first, or nothing is answered. */
            openSessionIds: string[];
            /** @description Local day of the last record of a visit; null: never treated. */
            lastRecordOn: string | null;
            /** @description Last local day on which the record must be kept; null: none, or not known. */
            keptThrough: string | null;
        };
        ErasureAnswerPageView: {
            items: components["schemas"]["ErasureAnswerView"][];
            /** @description Give it as `after` for the next page; null: this is the last. */
            next: string | null;
        };
        LegalClaimView: {
            id: string;
            /** @description Null after erasure and for whoever is not shown clients, as is the reason of its end. */
            reason: string | null;
            recordedAt: string;
            personId: string | null;
            /** @description Null: it still stands, and the client is not erased. */
            endedAt: string | null;
            endedBecause: string | null;
            endedBy: string | null;
        };
        NoteLegalClaimDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description What is claimed, or may be; kept sealed. */
            reason: string;
        };
        WrittenLegalClaimView: {
            id: string;
            clientId: string;
            endedAt: string | null;
        };
        EndLegalClaimDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description How it ended; kept sealed. */
            reason: string;
        };
        ProcedureView: {
            id: string;
            name: string;
            /** @enum {string} */
            bodyPlace: "other" | "brows" | "upper eyelids" | "lower eyelids" | "lips" | "areola" | "scalp";
            /** @description The touch-up window, in days after the first session; both days belong to it. */
            touchUpFromDays: number;
            touchUpToDays: number;
            /** @description Null: offered. */
            archivedAt: string | null;
            version: number;
        };
        AddProcedureDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            name: string;
            /** @enum {string} */
            bodyPlace: "brows" | "upper eyelids" | "lower eyelids" | "lips" | "areola" | "scalp" | "other";
            /** @description First day of the touch-up window, in days after the first session; 30 when left out. */
            touchUpFromDays?: number;
            /** @description Last day of the touch-up window; 40 when left out. */
            touchUpToDays?: number;
        };
        ChangeProcedureDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version this change was made from. */
            version: number;
            name?: string;
            /** @enum {string} */
            bodyPlace?: "brows" | "upper eyelids" | "lower eyelids" | "lips" | "areola" | "scalp" | "other";
            touchUpFromDays?: number;
            touchUpToDays?: number;
            /** @description True: no longer offered, while sessions keep it. False: offered again. */
            archived?: boolean;
        };
        KitItemView: {
            productId: string | null;
            /** @description Maker, name and shade of the product. */
            productName: string | null;
            /** @description Key of a configuration: any cartridge of it will do. */
            configuration: string | null;
            quantity: number;
        };
        KitListView: {
            procedureId: string;
            /** @description Null: the procedure's list, for all who have none of their own. */
            artistId: string | null;
            items: components["schemas"]["KitItemView"][];
            /** @description Null: no list was made yet, and none is needed for setup. */
            version: number | null;
        };
        KitItemDto: {
            /** Format: uuid */
            productId?: string | null;
            /** @description Key of a configuration, as the catalogue lists them: any cartridge of it will do. */
            configuration?: string | null;
            quantity: number;
        };
        PutKitListDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: uuid
             * @description Whose own list this is; left out or null: the procedure's, for all who have none of their own.
             */
            artistId?: string | null;
            /** @description The version this change was made from; left out: there is no such list yet. */
            version?: number;
            /** @description In the order in which they are laid out; empty: nothing is needed. */
            items: components["schemas"]["KitItemDto"][];
        };
        SessionListItemView: {
            id: string;
            /** @enum {string} */
            state: "planned" | "in setup" | "completed" | "cancelled" | "not attended";
            version: number;
            clientId: string;
            clientReference: string;
            /** @description Null after erasure and for whoever is not shown clients. */
            clientName: string | null;
            artistId: string;
            artistName: string | null;
            procedureId: string;
            procedureName: string;
            /** @enum {string} */
            visitKind: "patch test" | "first session" | "touch-up" | "refresh" | "correction" | "lightening" | "training";
            /** @enum {string} */
            bodyPlace: "other" | "brows" | "upper eyelids" | "lower eyelids" | "lips" | "areola" | "scalp";
            bookedAt: string | null;
            /** @description When it starts or, for a walk-in or a late record, started. */
            plannedStart: string | null;
            inSetupAt: string | null;
            completedAt: string | null;
            followsSessionId: string | null;
            /** @enum {string} */
            recordedFrom: "paper" | "tray" | "late";
        };
        SessionPageView: {
            items: components["schemas"]["SessionListItemView"][];
            /** @description Give it as `after` for the next page; null: this is the last. */
            next: string | null;
        };
        PlanSessionDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** Format: uuid */
            clientId: string;
            /** Format: uuid */
            artistId: string;
            /** Format: uuid */
            procedureId: string;
            /** @description Where exactly; kept sealed. */
            bodyPlaceDetail?: string | null;
            /**
             * Format: date-time
             * @description When the client booked; left out: not known.
             */
            bookedAt?: string | null;
            /** Format: date-time */
            plannedStart: string;
            /**
             * Format: uuid
             * @description The earlier session this one touches up, refreshes or corrects. Left out for a touch-up: the client's latest completed first session of the procedure.
             */
            followsSessionId?: string | null;
            /** @enum {string} */
            visitKind: "patch test" | "first session" | "touch-up" | "refresh" | "correction" | "lightening" | "training";
            /**
             * @description Left out: the procedure's.
             * @enum {string}
             */
            bodyPlace?: "brows" | "upper eyelids" | "lower eyelids" | "lips" | "areola" | "scalp" | "other";
        };
        WrittenSessionView: {
            id: string;
            /** @enum {string} */
            state: "planned" | "in setup" | "completed" | "cancelled" | "not attended";
            version: number;
            clientId: string;
            /** @description The client's short code. */
            clientReference: string;
            followsSessionId: string | null;
            /**
             * @description Why it follows that session: it was named, or, for a touch-up, it is the client's latest first session.
             * @enum {string|null}
             */
            followsBecause: "named" | "latest completed first session of this procedure" | null;
        };
        NewClientDto: {
            name: string;
            /** @description How to reach them: a telephone number or a mail address. */
            contact?: string | null;
            note?: string | null;
        };
        WalkInDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** Format: uuid */
            clientId?: string;
            /** Format: uuid */
            artistId: string;
            /** Format: uuid */
            procedureId: string;
            /** @description Where exactly; kept sealed. */
            bodyPlaceDetail?: string | null;
            /**
             * Format: uuid
             * @description As for a planned session.
             */
            followsSessionId?: string | null;
            /** @description A client who is not known yet. */
            client?: components["schemas"]["NewClientDto"];
            /** @enum {string} */
            visitKind: "patch test" | "first session" | "touch-up" | "refresh" | "correction" | "lightening" | "training";
            /**
             * @description Left out: the procedure's.
             * @enum {string}
             */
            bodyPlace?: "brows" | "upper eyelids" | "lower eyelids" | "lips" | "areola" | "scalp" | "other";
        };
        SessionClientView: {
            id: string;
            reference: string;
            /** @description Null after erasure and for whoever is not shown clients. */
            name: string | null;
        };
        NamedPersonView: {
            id: string;
            name: string | null;
        };
        SessionProcedureView: {
            id: string;
            name: string;
        };
        HealedResultView: {
            /** @description How much of the colour is still there, 0 to 100. */
            retainedColourPercent: number;
            note: string | null;
            /** @description When it was looked at. */
            occurredAt: string;
            /** @description The visit at which it was seen; null: not at a visit. */
            seenAtSessionId: string | null;
        };
        SessionTrayLineView: {
            id: string;
            productId: string;
            productName: string;
            lotId: string;
            lotCode: string | null;
            containerId: string;
            pieces: number;
            serial: string | null;
            /** @enum {string} */
            knownBy: "own label" | "maker's symbol" | "typed" | "picked from a list";
            admittedAt: string;
            /** @enum {string} */
            state: "on tray" | "taken off" | "settled";
            /** @enum {string|null} */
            settledAs: "used" | "opened unused" | "back unopened" | null;
        };
        MixPartView: {
            productId: string;
            makerName: string;
            productName: string;
            shade: string | null;
            isThinner: boolean;
            lotId: string;
            lotCode: string | null;
            containerId: string;
            /** @description Null when any of it was given as a volume. */
            drops: number | null;
            /** @description An estimate. */
            microlitres: number;
        };
        MixView: {
            id: string;
            sessionId: string;
            label: string;
            occurredAt: string;
            parts: components["schemas"]["MixPartView"][];
            /** @description Of all parts together, an estimate. */
            microlitres: number;
        };
        UsedCodeView: {
            kind: string;
            code: string;
        };
        UseReversalView: {
            /** @description Null after erasure and for whoever is not shown clients. */
            reason: string | null;
            recordedAt: string;
            personId: string | null;
        };
        UseView: {
            id: string;
            lotId: string;
            containerId: string;
            productId: string;
            /** @enum {string} */
            kind: "pigment" | "cartridge" | "consumable";
            /** @description The cup it was dropped into; null: used by itself. */
            mixId: string | null;
            /** @description The brand. */
            makerName: string;
            productName: string;
            /** @description The colour. */
            shade: string | null;
            /** @description Null: none was printed, or it could not be read. */
            lotCode: string | null;
            /** @description Every code printed for the lot. */
            codes: components["schemas"]["UsedCodeView"][];
            /** @description Last usable day; null: none was printed. */
            useBy: string | null;
            /** @enum {string} */
            knownBy: "own label" | "maker's symbol" | "typed" | "picked from a list";
            pieces: number;
            drops: number | null;
            /** @description An estimate. */
            microlitres: number;
            /** @description The reasons for which it had been refused, when it was used all the same. */
            againstRefusal: string[] | null;
            /** @description Why, in the artist's words. Null also after erasure and for whoever is not shown clients. */
            reason: string | null;
            appliedAt: string | null;
            removedAt: string | null;
            appliedBy: string | null;
            occurredAt: string;
            recordedAt: string;
            /** @description Who recorded it. */
            personId: string | null;
            /** @description Set when it was recorded by mistake. */
            reversal: components["schemas"]["UseReversalView"] | null;
        };
        SessionView: {
            id: string;
            /** @enum {string} */
            state: "planned" | "in setup" | "completed" | "cancelled" | "not attended";
            version: number;
            client: components["schemas"]["SessionClientView"];
            artist: components["schemas"]["NamedPersonView"];
            procedure: components["schemas"]["SessionProcedureView"];
            /** @enum {string} */
            visitKind: "patch test" | "first session" | "touch-up" | "refresh" | "correction" | "lightening" | "training";
            /** @enum {string} */
            bodyPlace: "other" | "brows" | "upper eyelids" | "lower eyelids" | "lips" | "areola" | "scalp";
            bodyPlaceDetail: string | null;
            bookedAt: string | null;
            plannedStart: string | null;
            plannedAt: string;
            inSetupAt: string | null;
            completedAt: string | null;
            cancelledAt: string | null;
            notAttendedAt: string | null;
            followsSessionId: string | null;
            /** @enum {string} */
            recordedFrom: "paper" | "tray" | "late";
            signedBy: components["schemas"]["NamedPersonView"] | null;
            signedAt: string | null;
            /** @description Null: not asked yet, or the client was erased, or the reader is not shown clients; so with every text here. */
            complications: string | null;
            healedResult: components["schemas"]["HealedResultView"] | null;
            tray: components["schemas"]["SessionTrayLineView"][];
            mixes: components["schemas"]["MixView"][];
            uses: components["schemas"]["UseView"][];
        };
        TracedLotView: {
            lotId: string;
            /** @description False: it was in it through a house blend. */
            direct: boolean;
            makerName: string;
            productName: string;
            shade: string | null;
            lotCode: string | null;
            useBy: string | null;
            /** @description What of the use is this lot's: derived, an estimate, never booked. Null: pieces, or an amount not known. */
            shareMicrolitres: number | null;
        };
        BlendedPigmentView: {
            useId: string;
            lots: components["schemas"]["TracedLotView"][];
        };
        SignatureView: {
            personId: string;
            name: string | null;
            signedAt: string | null;
        };
        ClientRecordView: {
            sessionId: string;
            client: components["schemas"]["SessionClientView"];
            /** @description When the visit took place: instant in UTC. */
            occurredAt: string | null;
            /** @description The studio's local day and time, YYYY-MM-DD HH:MM. */
            localDateAndTime: string | null;
            timeZone: string;
            /** @enum {string} */
            visitKind: "patch test" | "first session" | "touch-up" | "refresh" | "correction" | "lightening" | "training";
            procedureName: string;
            /** @enum {string} */
            bodyPlace: "other" | "brows" | "upper eyelids" | "lower eyelids" | "lips" | "areola" | "scalp";
            bodyPlaceDetail: string | null;
            /** @description Needle cartridges and other single-use needles. */
            instruments: components["schemas"]["UseView"][];
            pigments: components["schemas"]["UseView"][];
            /** @description What those pigments were made of that are house blends. */
            blendedPigments: components["schemas"]["BlendedPigmentView"][];
            /** @description Everything else that touched the client, such as an anaesthetic. */
            others: components["schemas"]["UseView"][];
            /** @description Recorded by mistake and reversed. */
            reversed: components["schemas"]["UseView"][];
            complications: string | null;
            artist: components["schemas"]["NamedPersonView"];
            /** @description Null: not signed yet. */
            signature: components["schemas"]["SignatureView"] | null;
            /** @enum {string} */
            recordedFrom: "paper" | "tray" | "late";
        };
        ChangeSessionDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version this change was made from. */
            version: number;
            /** Format: uuid */
            artistId?: string;
            /** Format: uuid */
            procedureId?: string;
            /** @description Null takes it away. */
            bodyPlaceDetail?: string | null;
            /** Format: date-time */
            bookedAt?: string | null;
            /** Format: date-time */
            plannedStart?: string;
            /**
             * Format: uuid
             * @description Null takes it away.
             */
            followsSessionId?: string | null;
            /** @enum {string} */
            visitKind?: "patch test" | "first session" | "touch-up" | "refresh" | "correction" | "lightening" | "training";
            /** @enum {string} */
            bodyPlace?: "brows" | "upper eyelids" | "lower eyelids" | "lips" | "areola" | "scalp" | "other";
        };
        SessionStepDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
        };
        ReasonFactsView: {
            /** @description Maker, product and shade of what was shown. */
            label?: string;
            lotCode?: string | null;
            /** @description Null: nothing that may be used is here. */
            insteadLabel?: string | null;
            insteadLotCode?: string | null;
            /** @description Why it is on hold, in the words of whoever put it there. */
            reason?: string;
            /** @enum {string} */
            on?: "container" | "lot" | "parent lot";
            lastDay?: string | null;
            /** @enum {string} */
            openedLifeFrom?: "none" | "label" | "assumed" | "sending studio";
            /** @description The use-by on record where the symbol's, which counts, is earlier. */
            laterRecordedUseBy?: string | null;
            symbolUseBy?: string;
            recordedUseBy?: string;
            /**
             * @description Of two dates that differ.
             * @enum {string}
             */
            counted?: "earlier" | "record";
            touchUpBy?: string;
            /** @enum {string} */
            state?: "opened" | "sealed" | "finished" | "discarded" | "practice only";
            pieces?: number;
            reservedPieces?: number;
            linesOnTray?: number;
            choices?: number;
            ownerId?: string;
            /** @description The other container that a warning is about. */
            containerId?: string;
            otherLabel?: string;
            otherLotCode?: string | null;
        };
        ReasonView: {
            /** @description Stable code, such as `expired`. */
            code: string;
            /** @description A sentence for the artist. */
            message: string;
            /** @description What the sentence is made of; left out where it says all, and in answers recorded before there were facts. */
            facts?: components["schemas"]["ReasonFactsView"];
        };
        TrayLineView: {
            id: string;
            productId: string;
            lotId: string;
            containerId: string;
            label: string;
            labelCode: string;
            lotCode: string | null;
            /** @enum {string} */
            stockForm: "container" | "pieces";
            isPigment: boolean;
            pieces: number;
            /** @enum {string} */
            knownBy: "own label" | "maker's symbol" | "typed" | "picked from a list";
            admittedAt: string;
            /** @enum {string} */
            state: "on tray" | "taken off" | "settled";
            /** @enum {string|null} */
            settledAs: "used" | "opened unused" | "back unopened" | null;
            /** @description Why it may not be used any more, when something changed since it was admitted. */
            refusedNow: components["schemas"]["ReasonView"][];
        };
        KitGapView: {
            productId: string | null;
            configuration: string | null;
            label: string;
            quantityPieces: number;
        };
        TrayView: {
            sessionId: string;
            /** @enum {string} */
            state: "planned" | "in setup" | "completed" | "cancelled" | "not attended";
            version: number;
            lines: components["schemas"]["TrayLineView"][];
            /** @description What the kit list asks for and the tray lacks; empty without a kit list. */
            lacking: components["schemas"]["KitGapView"][];
        };
        ScanDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description The text of the symbol as the reader gave it, or a lot code typed from a label. */
            symbol?: string;
            /**
             * Format: uuid
             * @description The bottle or box that is meant, after the question which.
             */
            containerId?: string;
            /**
             * Format: uuid
             * @description The lot picked from a list.
             */
            lotId?: string;
            /**
             * Format: uuid
             * @description A product wanted without a symbol: its lots are listed, or `none left` is counted.
             */
            productId?: string;
            /** @description ISO/IEC 15424 symbology identifier such as `]d2`, when the reader tells it apart. */
            symbologyIdentifier?: string;
            /** @description The answer to "another one?": this is one piece more with the same symbol. */
            another?: boolean;
        };
        TrayThingView: {
            containerId: string;
            lotId: string;
            productId: string;
            /** @description Maker, product and shade. */
            label: string;
            /** @description Lotward's own code on the label. */
            labelCode: string;
            lotCode: string | null;
            /** @enum {string} */
            state: "opened" | "sealed" | "finished" | "discarded" | "practice only";
            /** @description Last day on which it may be used; null when no date is known. */
            lastDay: string | null;
            /**
             * @description Whose opened life was counted.
             * @enum {string}
             */
            openedLifeFrom: "none" | "label" | "assumed" | "sending studio";
            /** @description Pieces by the book that no tray holds. */
            availablePieces: number;
        };
        ScanView: {
            id: string;
            sessionId: string;
            /** @enum {string} */
            verdict: "admitted" | "warned" | "refused" | "question";
            /** @description The worst first. */
            reasons: components["schemas"]["ReasonView"][];
            /** @enum {string} */
            knownBy: "own label" | "maker's symbol" | "typed" | "picked from a list";
            /** @description What the scan was taken for; null when a question is open. */
            thing: components["schemas"]["TrayThingView"] | null;
            /** @description What to take instead, or first. */
            instead: components["schemas"]["TrayThingView"] | null;
            /** @description What a question can be answered with. */
            choices: components["schemas"]["TrayThingView"][];
            /** @description What the screen may offer now: opening the sealed bottle, or one piece more. */
            offers: ("open" | "another")[];
            /** @description The line this scan put on the tray. */
            trayLineId: string | null;
            occurredAt: string;
        };
        TakeOffDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /**
             * @description Left out: back unopened. What was opened is not put back: its piece is wasted, a bottle is open from now on.
             * @enum {string}
             */
            outcome?: "back unopened" | "opened unused";
        };
        TakenOffView: {
            /** @description The line. */
            id: string;
        };
        StartMixDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description Such as `base` or `shadow`; never about the client. */
            label: string;
        };
        AddToMixDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** Format: uuid */
            containerId: string;
            drops?: number;
            microlitres?: number;
        };
        AddedToMixView: {
            id: string;
            sessionId: string;
            label: string;
            occurredAt: string;
            parts: components["schemas"]["MixPartView"][];
            /** @description Of all parts together, an estimate. */
            microlitres: number;
            /** @description Why the bottle may not be used any more; what was dropped is in the mix all the same. */
            warnings: string[];
        };
        CompletedLineDto: {
            /**
             * Format: date-time
             * @description When a topical anaesthetic was put on.
             */
            appliedAt?: string;
            /**
             * Format: date-time
             * @description When it was taken off.
             */
            removedAt?: string;
            /**
             * Format: uuid
             * @description Who put it on.
             */
            appliedBy?: string;
            /** @description Why, where something was used against a refusal; kept sealed. */
            reason?: string | null;
            /** Format: uuid */
            trayLineId: string;
            /** @enum {string} */
            outcome: "used" | "opened unused" | "back unopened";
            /** @description Drops outside any mix; left out, and no volume either: the amount is not known. */
            drops?: number;
            /** @description A volume outside any mix, an estimate. */
            microlitres?: number;
        };
        UsedBesidesDto: {
            /**
             * Format: date-time
             * @description When a topical anaesthetic was put on.
             */
            appliedAt?: string;
            /**
             * Format: date-time
             * @description When it was taken off.
             */
            removedAt?: string;
            /**
             * Format: uuid
             * @description Who put it on.
             */
            appliedBy?: string;
            /** @description Why, where something was used against a refusal; kept sealed. */
            reason?: string | null;
            /** Format: uuid */
            containerId: string;
            /** @description Pieces, for what is counted in pieces. */
            pieces?: number;
            /** @description Drops outside any mix; left out, and no volume either: the amount is not known. */
            drops?: number;
            /** @description A volume outside any mix, an estimate. */
            microlitres?: number;
        };
        CompleteSessionDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description Complications, in words; null: there were none, which has to be said. Kept sealed. */
            complications: string | null;
            /**
             * Format: uuid
             * @description The artist who signs off.
             */
            signedBy: string;
            /** @description What became of lines; a piece not named was used, a container not named was used when it is in a mix. */
            lines: components["schemas"]["CompletedLineDto"][];
            /** @description Used without having been admitted. */
            besides?: components["schemas"]["UsedBesidesDto"][];
        };
        CompletedUseView: {
            id: string;
            lotId: string;
            containerId: string;
            mixId: string | null;
            pieces: number;
            microlitres: number;
            /** @description Codes of the refusals it was used against. */
            againstRefusal: string[];
        };
        CompletionView: {
            sessionId: string;
            /** @enum {string} */
            state: "completed";
            completedAt: string;
            version: number;
            uses: components["schemas"]["CompletedUseView"][];
            /** @description Pieces that were opened and touched nobody. */
            wastedPieces: number;
        };
        DayKitItemView: {
            productId: string | null;
            configuration: string | null;
            quantity: number;
            /** @description How a person calls it. */
            label: string;
        };
        DaySessionView: {
            id: string;
            /** @enum {string} */
            state: "planned" | "in setup" | "completed" | "cancelled" | "not attended";
            /** @description The client's short code; a name is nothing a device keeps. */
            clientReference: string;
            procedureName: string;
            artistId: string;
            /** @enum {string} */
            visitKind: "patch test" | "first session" | "touch-up" | "refresh" | "correction" | "lightening" | "training";
            plannedStart: string | null;
            touchUpFromDays: number;
            touchUpToDays: number;
            /** @description The lines of its kit list; null: it has none. */
            kitItems: components["schemas"]["DayKitItemView"][] | null;
        };
        DayHoldView: {
            /** @enum {string} */
            kind: "quarantine" | "recall" | "compliance";
            reason: string;
            /** @enum {string} */
            on: "container" | "lot" | "parent lot";
        };
        DayContainerView: {
            containerId: string;
            lotId: string;
            productId: string;
            /** @enum {string} */
            form: "bottle" | "box";
            labelCode: string;
            /** @enum {string} */
            state: "opened" | "sealed" | "finished" | "discarded" | "practice only";
            ownerId: string | null;
            openedAt: string | null;
            receivedAt: string;
            pieces: number;
            code: string | null;
            useBy: string | null;
            /** @enum {string} */
            kind: "pigment" | "cartridge" | "consumable";
            makerName: string;
            productName: string;
            shade: string | null;
            /** @enum {string} */
            stockForm: "container" | "pieces";
            openedLife: string | null;
            usableThrough: string | null;
            holds: components["schemas"]["DayHoldView"][];
        };
        DayLabelView: {
            code: string;
            containerId: string;
            lotId: string;
            productId: string;
        };
        DayGtinView: {
            gtin: string;
            productId: string;
            /** @description Pieces in the package with this number. */
            contentCount: number;
        };
        DayLotCodeView: {
            code: string;
            lotId: string;
            productId: string;
            useBy: string | null;
        };
        DayLineView: {
            id: string;
            sessionId: string;
            containerId: string;
            lotId: string;
            productId: string;
            pieces: number;
            serial: string | null;
            /** @enum {string} */
            knownBy: "own label" | "maker's symbol" | "typed" | "picked from a list";
            admittedAt: string;
        };
        DaySerialView: {
            productId: string;
            serial: string;
        };
        DayPoolView: {
            /** @description Products that stand for each other by their configuration. */
            productIds: string[];
            poolKeys: string[];
        };
        DayFactsView: {
            studioId: string;
            /** @description The service's clock. */
            asOf: string;
            /** @description The studio's local day, YYYY-MM-DD. */
            day: string;
            timeZone: string;
            assumedOpenedLife: string | null;
            /** @description Planned for the day, or in setup from whatever day. */
            sessions: components["schemas"]["DaySessionView"][];
            /** @description What is present, and what lies on a tray though it was recorded as gone. */
            containers: components["schemas"]["DayContainerView"][];
            labels: components["schemas"]["DayLabelView"][];
            gtins: components["schemas"]["DayGtinView"][];
            lotCodes: components["schemas"]["DayLotCodeView"][];
            lines: components["schemas"]["DayLineView"][];
            /** @description Of the sessions in setup. */
            mixes: components["schemas"]["MixView"][];
            usedSerials: components["schemas"]["DaySerialView"][];
            pools: components["schemas"]["DayPoolView"][];
            /** @description Containers beyond what a device is given, which it does not know. */
            containersLeftOut: number;
        };
        SisterLotView: {
            lotId: string;
            /** @description Last usable day; null: none was printed. */
            useBy: string | null;
        };
        TraceTotalsView: {
            /** @description Every use, also those recorded by mistake. */
            uses: number;
            /** @description Uses recorded by mistake and reversed. */
            reversedUses: number;
            /** @description Sessions with a use that stands. */
            sessions: number;
            /** @description Clients with a use that stands. */
            clients: number;
        };
        TraceUseView: {
            id: string;
            sessionId: string;
            clientId: string;
            clientReference: string;
            artistId: string;
            procedureId: string;
            procedureName: string;
            /** @enum {string} */
            visitKind: "patch test" | "first session" | "touch-up" | "refresh" | "correction" | "lightening" | "training";
            /** @enum {string} */
            bodyPlace: "other" | "brows" | "upper eyelids" | "lower eyelids" | "lips" | "areola" | "scalp";
            /**
             * @description How the session was recorded: as it happened, later, or from paper.
             * @enum {string}
             */
            recordedFrom: "paper" | "tray" | "late";
            occurredAt: string;
            recordedAt: string;
            /** @description The lot that was taken in hand, with its label as it was known then. */
            lotId: string;
            containerId: string;
            makerName: string;
            productName: string;
            shade: string | null;
            lotCode: string | null;
            useBy: string | null;
            /** @enum {string} */
            knownBy: "own label" | "maker's symbol" | "typed" | "picked from a list";
            pieces: number;
            drops: number | null;
            /** @description An estimate. */
            microlitres: number;
            mixId: string | null;
            /** @description By what the lots reached the client; empty: directly. */
            through: ("mix" | "house blend")[];
            /** @description The reasons for which it had been refused, when it was used all the same. */
            againstRefusal: string[] | null;
            /** @description Set when it was recorded by mistake. */
            reversedAt: string | null;
            /** @description From a lot: the lots asked for. From a client or a session: every lot that was in it. */
            lots: components["schemas"]["TracedLotView"][];
        };
        LotTraceView: {
            /** @description Whoever asks for a code means these too. */
            sisterLots: components["schemas"]["SisterLotView"][];
            totals: components["schemas"]["TraceTotalsView"];
            items: components["schemas"]["TraceUseView"][];
            /** @description Give it as `after` for the next page; null: this is the last. */
            next: string | null;
        };
        TraceLotsDto: {
            /**
             * Format: uuid
             * @description The `next` of the page before.
             */
            after?: string;
            lotIds: string[];
            /** @description How many uses at most, 1 to 200. */
            limit?: number;
        };
        TraceView: {
            totals: components["schemas"]["TraceTotalsView"];
            items: components["schemas"]["TraceUseView"][];
            /** @description Give it as `after` for the next page; null: this is the last. */
            next: string | null;
        };
        TouchUpWindowView: {
            /** @description Local days, YYYY-MM-DD; both belong to the window. */
            opensOn: string;
            closesOn: string;
        };
        TouchUpObstacleView: {
            /** @enum {string} */
            obstacle: "finished" | "practice only" | "expired" | "open too long" | "held";
            message: string;
        };
        PigmentAtTouchUpView: {
            productId: string;
            makerName: string;
            productName: string;
            shade: string | null;
            lotId: string;
            lotCode: string | null;
            containerId: string;
            /** @description Null when it was given as a volume. */
            drops: number | null;
            /** @description An estimate. */
            microlitres: number;
            /** @enum {string} */
            usableAtStart: "yes" | "no" | "no date known";
            /** @enum {string} */
            usableAtEnd: "yes" | "no" | "no date known";
            /** @description Last usable local day; null when no date is known. */
            lastDay: string | null;
            /**
             * @description Whose opened life was counted.
             * @enum {string}
             */
            openedLifeFrom: "none" | "label" | "assumed" | "sending studio";
            /** @description Empty when nothing stands against it. */
            whyNot: components["schemas"]["TouchUpObstacleView"][];
            /** @description Other containers of the same lot that can be used on the first day of the window. */
            otherContainerIds: string[];
        };
        MixAtTouchUpView: {
            id: string;
            label: string;
            parts: components["schemas"]["PigmentAtTouchUpView"][];
        };
        InstrumentOfVisitView: {
            productId: string;
            makerName: string;
            productName: string;
            pieces: number;
        };
        FollowingVisitView: {
            sessionId: string;
            /** @enum {string} */
            visitKind: "patch test" | "first session" | "touch-up" | "refresh" | "correction" | "lightening" | "training";
            /** @enum {string} */
            state: "planned" | "in setup" | "completed" | "cancelled" | "not attended";
            plannedStart: string | null;
            completedAt: string | null;
        };
        TouchUpView: {
            /** @description The earlier visit. */
            sessionId: string;
            clientId: string;
            artistId: string;
            procedureId: string;
            procedureName: string;
            /** @enum {string} */
            visitKind: "patch test" | "first session" | "touch-up" | "refresh" | "correction" | "lightening" | "training";
            /** @description Local day, YYYY-MM-DD. */
            completedOn: string;
            window: components["schemas"]["TouchUpWindowView"];
            mixes: components["schemas"]["MixAtTouchUpView"][];
            /** @description Pigments used by themselves, in no mix. */
            pigments: components["schemas"]["PigmentAtTouchUpView"][];
            instruments: components["schemas"]["InstrumentOfVisitView"][];
            /** @description How the colour healed, once it was looked at. */
            healedResult: components["schemas"]["HealedResultView"] | null;
            /** @description Visits that follow this one. */
            visits: components["schemas"]["FollowingVisitView"][];
        };
        RecordHealedResultDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description What was seen; kept sealed. */
            note?: string | null;
            /**
             * Format: uuid
             * @description The visit at which it was seen, such as the touch-up.
             */
            seenAtSessionId?: string | null;
            /** @description To correct what was recorded: the version of the session it was read from. Left out: nothing is recorded yet. */
            version?: number;
            /** @description How much of the colour is still there. */
            retainedColourPercent: number;
        };
        LateUseDto: {
            /**
             * Format: date-time
             * @description When a topical anaesthetic was put on.
             */
            appliedAt?: string;
            /**
             * Format: date-time
             * @description When it was taken off.
             */
            removedAt?: string;
            /**
             * Format: uuid
             * @description Who put it on.
             */
            appliedBy?: string;
            /** @description Why, where something was used against a refusal; kept sealed. */
            reason?: string | null;
            /** Format: uuid */
            containerId?: string;
            /** Format: uuid */
            lotId?: string;
            /**
             * Format: uuid
             * @description With what was written down of its label; a lot that is not on record is made.
             */
            productId?: string;
            /** @description With productId: the lot code as written. */
            code?: string;
            /**
             * Format: uuid
             * @description The mix of this session that it went into; left out: used by itself.
             */
            mixId?: string;
            /**
             * @description With productId: why there is no code.
             * @enum {string}
             */
            codeState?: "none printed" | "unreadable";
            /** @description With productId: YYYY-MM-DD, YYYY-MM or YYYY as written; left out: not written. */
            useBy?: string | null;
            /**
             * @description How the lot was known.
             * @enum {string}
             */
            knownBy: "own label" | "maker's symbol" | "typed" | "picked from a list";
            /** @description For what is counted in pieces; left out: 1. */
            pieces?: number;
            /** @description Drops outside any mix; left out, and no volume either: the amount is not known. */
            drops?: number;
            /** @description A volume outside any mix, an estimate. */
            microlitres?: number;
        };
        RecordLateSessionDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it took place.
             */
            occurredAt: string;
            /**
             * Format: date-time
             * @description When the client booked; left out: not known.
             */
            bookedAt?: string | null;
            /**
             * Format: uuid
             * @description Exactly one of clientId and client is given.
             */
            clientId?: string;
            /** Format: uuid */
            artistId: string;
            /** Format: uuid */
            procedureId: string;
            /** @description Where exactly; kept sealed. */
            bodyPlaceDetail?: string | null;
            /** Format: uuid */
            followsSessionId?: string | null;
            /** @description In words; null: there were none; left out: not known. Kept sealed. */
            complications?: string | null;
            /**
             * Format: uuid
             * @description The artist who signs off.
             */
            signedBy: string;
            /**
             * @description From memory or a device that was away (late), or from a paper form.
             * @enum {string}
             */
            source: "late" | "paper";
            /** @description A client who is not known yet. */
            client?: components["schemas"]["NewClientDto"];
            /** @enum {string} */
            visitKind: "patch test" | "first session" | "touch-up" | "refresh" | "correction" | "lightening" | "training";
            /**
             * @description Left out: the procedure's.
             * @enum {string}
             */
            bodyPlace?: "brows" | "upper eyelids" | "lower eyelids" | "lips" | "areola" | "scalp" | "other";
            uses: components["schemas"]["LateUseDto"][];
        };
        RecordedUsesView: {
            id: string;
            /** @enum {string} */
            state: "completed";
            version: number;
            clientId: string;
            clientReference: string;
            followsSessionId: string | null;
            /** @description What was recorded by this request. */
            uses: components["schemas"]["CompletedUseView"][];
            /** @description Lots that were not on record and were made for it. */
            madeLotIds: string[];
            /** @description What should be looked at, such as a code that is known with another use-by date. */
            warnings: string[];
        };
        AddUsesDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            uses: components["schemas"]["LateUseDto"][];
        };
        AddComplicationsDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description In words; kept sealed, below what was said before. */
            complications: string;
            /** @description The version of the session it was read from. */
            version: number;
        };
        ReverseUseDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description Why; kept sealed. To be left out for a client who was erased, for nothing can be sealed about them any more. */
            reason?: string;
        };
        ReversedUseView: {
            useId: string;
            sessionId: string;
            /** @description The session's version after it. */
            version: number;
            /** @description What went back on the book. */
            pieces: number;
            /** @description An estimate. */
            microlitres: number;
        };
        ExportingStudioView: {
            id: string;
            name: string;
            /** @description IANA name; the local days in this document are its days. */
            timeZone: string;
        };
        ExportedRetentionView: {
            /** @description What the studio set; null: it has not said how long it keeps records. */
            policy: components["schemas"]["RetentionView"] | null;
            /** @description Local day of the last record of a visit; null: none took place. */
            lastRecordOn: string | null;
            /** @description Last local day on which the record must be kept; null: nothing has to be kept, or it is not known. */
            keptThrough: string | null;
        };
        ExportedAccessView: {
            accessedAt: string;
            /** @enum {string} */
            what: "recall" | "touch-up" | "client" | "session" | "client list" | "client search" | "session list" | "session record" | "client trace" | "session trace" | "legal claims" | "export";
            role: string | null;
            personId: string | null;
        };
        ClientExportView: {
            /** @enum {string} */
            format: "lotward client export";
            /** @enum {integer} */
            formatVersion: 1;
            exportedAt: string;
            studio: components["schemas"]["ExportingStudioView"];
            client: components["schemas"]["ClientView"];
            retention: components["schemas"]["ExportedRetentionView"];
            /** @description Every visit in the order in which it was put on record, with what was mixed and used, lots and dates. */
            sessions: components["schemas"]["SessionView"][];
            /** @description What the house blends among the pigments were made of. */
            blendedPigments: components["schemas"]["BlendedPigmentView"][];
            legalClaims: components["schemas"]["LegalClaimView"][];
            /** @description What was answered to wishes for erasure. */
            erasureAnswers: components["schemas"]["ErasureAnswerView"][];
            /** @description Who was shown the record, the latest first; this export is the first of them. */
            accesses: components["schemas"]["ExportedAccessView"][];
        };
        JudgeBookingsDto: {
            text: string;
            /**
             * Format: uuid
             * @description Whose bookings those are that name nobody.
             */
            artistId?: string;
            /**
             * Format: uuid
             * @description Of bookings that name none. In a calendar left out: entries that name none are no bookings.
             */
            procedureId?: string;
            /**
             * @description Of bookings that say none.
             * @enum {string}
             */
            visitKind?: "patch test" | "first session" | "touch-up" | "refresh" | "correction" | "lightening" | "training";
        };
        BookingCountsView: {
            rows: number;
            faultyRows: number;
            sessions: number;
            clients: number;
            onRecord: number;
            leftOut: number;
        };
        BookingRowView: {
            /** @description Of a table as a spreadsheet counts it, the header being row 1; of a calendar which of its entries, from 1. */
            row: number;
            /** @description Who comes, as the file says it; null when it names a reference. Told to whoever brought the file, kept nowhere. */
            clientName: string | null;
            /** @description Of a client on record. */
            clientReference: string | null;
            /** @description Whether the client is not on record yet, and would be put there by this row or by one above. */
            newClient: boolean;
            artist: string | null;
            procedure: string | null;
            visitKind: string | null;
            /** @description Instant; null when it is at fault. */
            plannedStart: string | null;
            /**
             * @description What it would do; null while it has faults.
             * @enum {string|null}
             */
            effect: "left out" | "new session" | "on record already" | null;
            /** @description The session that is on record already. */
            sessionId: string | null;
            faults: components["schemas"]["CellFaultView"][];
            warnings: string[];
        };
        BookingsPreviewView: {
            /** @description Whether it can be taken in as it is: there is no fault anywhere. */
            usable: boolean;
            /** @enum {string} */
            kind: "table" | "calendar";
            counts: components["schemas"]["BookingCountsView"];
            /** @description Faults of the file as a whole or of its header; then no row was judged. */
            faults: components["schemas"]["FileFaultView"][];
            rows: components["schemas"]["BookingRowView"][];
        };
        TakeInBookingsDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            text: string;
            /**
             * Format: uuid
             * @description Whose bookings those are that name nobody.
             */
            artistId?: string;
            /**
             * Format: uuid
             * @description Of bookings that name none. In a calendar left out: entries that name none are no bookings.
             */
            procedureId?: string;
            /**
             * @description Of bookings that say none.
             * @enum {string}
             */
            visitKind?: "patch test" | "first session" | "touch-up" | "refresh" | "correction" | "lightening" | "training";
        };
        TakenInBookingView: {
            row: number;
            sessionId: string;
            plannedStart: string;
            clientId: string;
            clientReference: string;
            newClient: boolean;
        };
        TakenInBookingsView: {
            recordedAt: string;
            counts: components["schemas"]["BookingCountsView"];
            /** @description The sessions that were made. */
            rows: components["schemas"]["TakenInBookingView"][];
        };
        SupplierContactView: {
            mailAddress: string | null;
            customerNumber: string | null;
        };
        LeadTimeView: {
            /** @enum {string} */
            basis: "assumed" | "quoted" | "learnt" | "quoted and learnt";
            /** @description Half of the orders arrive within so many calendar days. */
            medianDays: number;
            /** @description 95 of 100 arrive within so many. */
            days95: number;
            /** @description Orders that were counted. */
            orders: number;
            /** @description Arrivals that were not: before their order, or later than a year after it. */
            leftOut: number;
        };
        SupplierTermsView: {
            supplierId: string;
            supplierName: string;
            quotedLeadTimeDays: number | null;
            /** @description 1 Monday to 7 Sunday, rising; none: orders are placed on any day. */
            orderWeekdays: number[];
            /** @description In minor units of `currency`, as all amounts. */
            minimumOrderMinor: number | null;
            deliveryCostMinor: number | null;
            freeDeliveryFromMinor: number | null;
            /** @description Of the terms; of the studio when none are set. */
            currency: string;
            hasContact: boolean;
            /** @description Null in the answer to a write, which is kept, to who may not place orders, and when nothing is known. */
            contact: components["schemas"]["SupplierContactView"] | null;
            leadTime: components["schemas"]["LeadTimeView"];
            /** @description Products the supplier offers now. */
            offers: number;
            /** @description Null: no terms are set. */
            version: number | null;
        };
        SupplierTermsPageView: {
            items: components["schemas"]["SupplierTermsView"][];
            /** @description Give it as `after` for the next page; null on the last. */
            next: string | null;
        };
        SupplierContactDto: {
            /** @description Without a name before it, such as orders@supplier.example; left out or null: it takes none by mail. */
            mailAddress?: string | null;
            /** @description The number under which the supplier knows the studio. */
            customerNumber?: string | null;
        };
        SetSupplierTermsDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version this change was made from; left out when no terms are set yet. */
            version?: number;
            /** @description Calendar days from ordering to arrival, as the supplier says. */
            quotedLeadTimeDays?: number | null;
            /** @description Weekdays on which orders are placed, 1 Monday to 7 Sunday; none: any day. */
            orderWeekdays: number[];
            /** @description The smallest order, in minor units of the studio's currency. */
            minimumOrderMinor?: number | null;
            /** @description What one delivery costs. */
            deliveryCostMinor?: number | null;
            /** @description Orders of so much are delivered for nothing. */
            freeDeliveryFromMinor?: number | null;
            /** @description Where orders are sent, by who may place them; left out: as it stands; null: it is forgotten. */
            contact?: components["schemas"]["SupplierContactDto"] | null;
        };
        PackPriceView: {
            fromPacks: number;
            /** @description In whole minor units of the offer's currency. */
            packPriceMinor: number;
        };
        OfferView: {
            id: string;
            supplierId: string;
            supplierName: string;
            productId: string;
            productName: string;
            shade: string | null;
            makerName: string;
            /**
             * @description Bottles are kept one by one, and each is 1 piece.
             * @enum {string}
             */
            stockForm: "container" | "pieces";
            /** @description The product is not used any more: nothing of it is planned. */
            productArchived: boolean;
            /** @description The supplier's own number of it. */
            orderCode: string | null;
            packContainers: number;
            /** @description Pieces in each container; 1 for a bottle. */
            containerPieces: number;
            minimumPacks: number;
            /** @description By rising number of packs; the first is from the minimum. */
            prices: components["schemas"]["PackPriceView"][];
            currency: string;
            /** @description False: the studio counts in another currency now, and plans leave it out until its prices are written anew. */
            inStudioCurrency: boolean;
            /** @description Days an unopened container usually still keeps when it arrives; null: it is learnt, or assumed. */
            lifeOnArrivalDays: number | null;
            /** @description Where it differs from the supplier's. */
            leadTimeDays: number | null;
            version: number;
            createdAt: string;
            endedAt: string | null;
        };
        OfferPageView: {
            items: components["schemas"]["OfferView"][];
            /** @description Give it as `after` for the next page; null on the last. */
            next: string | null;
        };
        PackPriceDto: {
            fromPacks: number;
            /** @description In whole minor units. */
            packPriceMinor: number;
        };
        AddOfferDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** Format: uuid */
            supplierId: string;
            /** Format: uuid */
            productId: string;
            /** @description The supplier's own number of it. */
            orderCode?: string | null;
            /** @description Bottles or boxes in the smallest pack that is sold. */
            packContainers: number;
            /** @description Pieces in each; 1 for a bottle. */
            containerPieces: number;
            /** @description The smallest order. */
            minimumPacks: number;
            /** @description By rising number of packs; the first from the smallest order on, none above the one before. */
            prices: components["schemas"]["PackPriceDto"][];
            /** @description The studio's; left out: just that. */
            currency?: string;
            /** @description Days an unopened container usually still keeps when it arrives; null: it is learnt, or assumed. */
            lifeOnArrivalDays?: number | null;
            /** @description Where it differs from the supplier's. */
            leadTimeDays?: number | null;
        };
        ChangeOfferDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version this change was made from. */
            version: number;
            orderCode?: string | null;
            packContainers?: number;
            containerPieces?: number;
            minimumPacks?: number;
            prices?: components["schemas"]["PackPriceDto"][];
            /** @description The studio's; left out: just that. */
            currency?: string;
            lifeOnArrivalDays?: number | null;
            leadTimeDays?: number | null;
        };
        EndOfferDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version that is ended. */
            version: number;
        };
        TrainingCourseView: {
            id: string;
            procedureId: string;
            procedureName: string;
            /** @description YYYY-MM-DD. */
            heldOn: string;
            trainees: number;
            /** @description The studio's own name or number of it. */
            reference: string | null;
            version: number;
            createdAt: string;
            cancelledAt: string | null;
        };
        TrainingCoursePageView: {
            items: components["schemas"]["TrainingCourseView"][];
            /** @description Give it as `after` for the next page; null on the last. */
            next: string | null;
        };
        AddTrainingCourseDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: uuid
             * @description Whose kit list each trainee needs.
             */
            procedureId: string;
            /**
             * Format: date
             * @description Today or later, at most two years ahead.
             */
            heldOn: string;
            /** @description The studio's own name or number of it. Never of a person: it is kept in the clear. */
            reference?: string | null;
            trainees: number;
        };
        ChangeTrainingCourseDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version this change was made from. */
            version: number;
            /** Format: uuid */
            procedureId?: string;
            /** Format: date */
            heldOn?: string;
            /** @description As when it was added: never of a person. */
            reference?: string | null;
            trainees?: number;
        };
        CancelTrainingCourseDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version that is cancelled. */
            version: number;
        };
        EffectiveNumberView: {
            value: number;
            /** @description Nobody set it: it is an assumption, and plans say so. */
            assumed: boolean;
        };
        PlanningAssumptionView: {
            /** @enum {string} */
            code: "deliveryCostMinor" | "serviceTargetPerMille" | "orderCostMinor" | "holdingPerYearPerMille" | "returnPerMille" | "leadTimeDays" | "lifeOnArrivalDays";
            value: number;
            /**
             * @description Why it is what it is.
             * @enum {string}
             */
            basis: "common practice, no source" | "assumption";
        };
        PlanningSettingsView: {
            serviceTargetPerMille: components["schemas"]["EffectiveNumberView"];
            /** @description In minor units of `currency`. */
            orderCostMinor: components["schemas"]["EffectiveNumberView"];
            holdingPerYearPerMille: components["schemas"]["EffectiveNumberView"];
            returnPerMille: components["schemas"]["EffectiveNumberView"];
            /** @description The studio's. */
            currency: string;
            assumptions: components["schemas"]["PlanningAssumptionView"][];
            /** @description Null: nothing is set. */
            version: number | null;
        };
        SetPlanningSettingsDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version this change was made from; left out when nothing is set yet. */
            version?: number;
            /** @description Share of the need that should be met, 0 to 1000 per mille. */
            serviceTargetPerMille?: number | null;
            /** @description What placing and putting away one order costs, without delivery, in minor units. */
            orderCostMinor?: number | null;
            /** @description What holding stock for a year costs, per mille of its price. */
            holdingPerYearPerMille?: number | null;
            /** @description Clients who come back for their touch-up, until it is learnt, 0 to 1000 per mille. */
            returnPerMille?: number | null;
        };
        ItemPlanningView: {
            /** @enum {string} */
            itemKind: "product" | "configuration";
            /** @description A product id, or a key of a cartridge configuration. */
            itemKey: string;
            /** @description Of a product in words; null for a configuration, whose key says it. */
            itemName: string | null;
            serviceTargetPerMille: number | null;
            /** @description In minor units of the studio's currency. */
            shortageCostMinor: number | null;
            /** @enum {string|null} */
            rangeChoice: "keep in stock" | "order for the appointment" | "let run out" | null;
            replacesProductId: string | null;
            replacesProductName: string | null;
            version: number;
        };
        ItemPlanningPageView: {
            items: components["schemas"]["ItemPlanningView"][];
            /** @description Give it as `after` for the next page; null on the last. */
            next: string | null;
        };
        SetItemPlanningDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description A product id, or a key of a cartridge configuration. */
            itemKey: string;
            /**
             * Format: uuid
             * @description Of a product: the one it takes the place of, such as before a new formula; its use counts as this one's.
             */
            replacesProductId?: string | null;
            /** @description The version this change was made from; left out when nothing is set yet. */
            version?: number;
            /** @enum {string} */
            itemKind: "product" | "configuration";
            serviceTargetPerMille?: number | null;
            /** @description What one need that is not met costs, such as a session that could not have it, set instead of a target. */
            shortageCostMinor?: number | null;
            /**
             * @description Null: the plan decides.
             * @enum {string|null}
             */
            rangeChoice?: "keep in stock" | "order for the appointment" | "let run out" | null;
        };
        RemoveItemPlanningDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            itemKey: string;
            /** @description The version that is removed. */
            version: number;
            /** @enum {string} */
            itemKind: "product" | "configuration";
        };
        ArtistPlanningView: {
            personId: string;
            /** @description The last day here, YYYY-MM-DD; null: no end is known. */
            leavesOn: string | null;
            /** @description The last day on which they may do anything, as it stands in the list of people; it ends what they need too. */
            worksUntil: string | null;
            /** @description Null: nothing is set. */
            version: number | null;
        };
        SetArtistPlanningDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date
             * @description The last day here; what this artist needs ends with it. Null: no end is known.
             */
            leavesOn?: string | null;
            /** @description The version this change was made from; left out when nothing is set yet. */
            version?: number;
        };
        PurchaseOrderSummaryView: {
            id: string;
            number: number;
            supplierId: string;
            supplierName: string;
            /** @enum {string} */
            state: "closed" | "sent" | "called off" | "draft" | "approved" | "received in part";
            planId: string | null;
            currency: string;
            lines: number;
            productIds: string[];
            /** @description Of the lines whose price is known, without delivery. */
            linesMinor: number;
            unpricedLines: number;
            sentAt: string | null;
            /** @description With what the order, or its rest, was or is expected; null: nothing was. */
            expectedDeliveryId: string | null;
            /** @description YYYY-MM-DD; null: nothing is expected. */
            expectedOn: string | null;
            late: boolean;
            /**
             * @description Of the latest mail; null: none was asked for.
             * @enum {string|null}
             */
            mailState: "sent" | "withdrawn" | "waiting" | "failed" | null;
            /** @enum {string|null} */
            endedAs: "called off" | "received whole" | "rest called off" | "closed short" | null;
            version: number;
            createdAt: string;
        };
        PurchaseOrderPageView: {
            items: components["schemas"]["PurchaseOrderSummaryView"][];
            /** @description Give it as `after` for the next page; null on the last. */
            next: string | null;
        };
        PurchaseOrderLineView: {
            id: string;
            /** @description From 1. Numbers of lines that were taken off are not used again. */
            lineNumber: number;
            productId: string;
            makerName: string;
            productName: string;
            shade: string | null;
            productArchived: boolean;
            /** @description Null: it was written by hand. */
            offerId: string | null;
            /** @description The supplier's own number of it. */
            orderCode: string | null;
            packs: number;
            /** @description Containers in a pack. */
            packContainers: number;
            /** @description Pieces in each container; 1 for a bottle. */
            containerPieces: number;
            packPriceMinor: number | null;
            lineMinor: number | null;
            orderedPieces: number;
            /** @description Of this product; more than was ordered counts too. */
            receivedPieces: number;
            outstandingPieces: number;
        };
        PurchaseOrderSumsView: {
            /** @description Of the lines whose price is known. */
            linesMinor: number;
            unpricedLines: number;
            deliveryCostMinor: number | null;
            /**
             * @description Who says it: a person, the supplier's terms, or, from the approval on, what was approved.
             * @enum {string}
             */
            deliveryCostFrom: "approved" | "by hand" | "not known" | "terms";
            /** @description Null while a price or the delivery cost is not known. */
            totalMinor: number | null;
            /** @description What the supplier takes at least; null: nothing is known. */
            minimumOrderMinor: number | null;
        };
        PurchaseOrderWarningView: {
            /** @enum {string} */
            code: "below minimum order" | "below minimum packs" | "offer ended" | "product archived" | "price not known" | "price changed" | "offer changed since the plan" | "plan not the latest" | "plan is old";
            /** @description The line it is about; null: the whole order. */
            lineNumber: number | null;
            message: string;
        };
        PurchaseOrderMailView: {
            id: string;
            /** @enum {string} */
            state: "sent" | "withdrawn" | "waiting" | "failed";
            /** @description Attempts whose end is known. */
            attempts: number;
            /** @description An attempt was cut off before its end was known, so the supplier may have it twice; the mail says so itself. */
            mayHaveArrivedTwice: boolean;
            /** @description Why the last attempt failed. */
            lastError: string | null;
            /** @description When it is tried next, or an attempt under way must be over; null: not any more. */
            nextAttemptAt: string | null;
            createdAt: string;
            settledAt: string | null;
        };
        PurchaseOrderExpectedView: {
            id: string;
            /** @description YYYY-MM-DD. */
            expectedOn: string;
            /** @description Still expected although its day is over. */
            late: boolean;
            /** @enum {string|null} */
            endedAs: "received" | "called off" | null;
            version: number;
        };
        PurchaseOrderDeliveryView: {
            deliveryId: string;
            occurredAt: string;
            reference: string | null;
        };
        PurchaseOrderDifferenceView: {
            /** @enum {string} */
            kind: "not ordered" | "more than ordered" | "another product";
            orderLineId: string | null;
            deliveryId: string;
            deliveryLineId: string;
            productId: string;
            makerName: string;
            productName: string;
            shade: string | null;
            pieces: number;
        };
        PurchaseOrderView: {
            id: string;
            /** @description Counted by studio, from 1. */
            number: number;
            supplierId: string;
            supplierName: string;
            /** @enum {string} */
            state: "closed" | "sent" | "called off" | "draft" | "approved" | "received in part";
            /** @description What may be done with it now. */
            steps: ("change" | "close" | "send" | "approve" | "draft again" | "call off")[];
            /** @description The plan it was drafted from. */
            planId: string | null;
            /** @description ISO 4217 code. */
            currency: string;
            lines: components["schemas"]["PurchaseOrderLineView"][];
            sums: components["schemas"]["PurchaseOrderSumsView"];
            /** @description While it is a draft. */
            warnings: components["schemas"]["PurchaseOrderWarningView"][];
            /**
             * @description Why it cannot be sent by mail; null: it can.
             * @enum {string|null}
             */
            mailObstacle: "no mail server" | "no mail address" | null;
            mail: components["schemas"]["PurchaseOrderMailView"] | null;
            approvedBy: string | null;
            approvedAt: string | null;
            /** @enum {string|null} */
            sentAs: "mail" | "by hand" | null;
            sentAt: string | null;
            expected: components["schemas"]["PurchaseOrderExpectedView"] | null;
            deliveries: components["schemas"]["PurchaseOrderDeliveryView"][];
            differences: components["schemas"]["PurchaseOrderDifferenceView"][];
            endedAt: string | null;
            /** @enum {string|null} */
            endedAs: "called off" | "received whole" | "rest called off" | "closed short" | null;
            version: number;
            createdAt: string;
        };
        DraftFromPlanDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** Format: uuid */
            planId: string;
            /** @description Numbers of the plan's lines that are to be ordered; each names an offer and packs. */
            lineNumbers: number[];
            /** @description Draft also what stands in an order of this plan already, or in any that is not sent yet. Left out: that is refused. */
            again?: boolean;
        };
        DraftedOrdersView: {
            /** @description One for each supplier, by the name of the supplier. */
            orders: components["schemas"]["PurchaseOrderView"][];
        };
        AddedOrderLineDto: {
            /**
             * Format: uuid
             * @description Says the product, the order code, the pack and its price.
             */
            offerId?: string;
            /**
             * Format: uuid
             * @description Where no offer is named.
             */
            productId?: string;
            /** @description Where no offer is named: the supplier's own number. */
            orderCode?: string | null;
            packs: number;
            /** @description Where no offer is named: containers in a pack; left out: 1. */
            packContainers?: number;
            /** @description Where no offer is named: pieces in each container; left out: 1. */
            containerPieces?: number;
            /** @description Minor units of the studio's currency; left out: the offer's price for so many; null: not known. */
            packPriceMinor?: number | null;
        };
        DraftOrderDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** Format: uuid */
            supplierId: string;
            lines?: components["schemas"]["AddedOrderLineDto"][];
        };
        ChangedOrderLineDto: {
            /**
             * Format: uuid
             * @description The line.
             */
            lineId: string;
            packs?: number;
            /** @description Left out: the offer's price for so many packs, where they change; null: not known. */
            packPriceMinor?: number | null;
        };
        ChangeOrderDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description The version this change was made from. */
            version: number;
            /** @description What bringing it costs, minor units; null: as the supplier's terms say. */
            deliveryCostMinor?: number | null;
            add?: components["schemas"]["AddedOrderLineDto"][];
            change?: components["schemas"]["ChangedOrderLineDto"][];
            /** @description Lines that are to be ordered no more. */
            takeOff?: string[];
        };
        ApproveOrderDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            version: number;
            /** @description The codes of the warnings that were read; each that stands must be among them. */
            confirmed?: ("below minimum order" | "below minimum packs" | "offer ended" | "product archived" | "price not known" | "price changed" | "offer changed since the plan" | "plan not the latest" | "plan is old")[];
        };
        OrderStepDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            version: number;
        };
        SendOrderDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            version: number;
            /**
             * Format: date
             * @description The last day on which it is in time, YYYY-MM-DD; left out: by the supplier's lead time.
             */
            expectedOn?: string | null;
            /**
             * @description By mail to the address in the supplier's terms; by hand: somebody sent it, or sends it now, by another way.
             * @enum {string}
             */
            as: "mail" | "by hand";
        };
        ClaimedGoodsView: {
            /** @description Null: no product is named. */
            productId: string | null;
            makerName: string | null;
            productName: string | null;
            shade: string | null;
            /** @description The code of the lot. */
            lotCode: string | null;
            /** @description The number of the order; null: of none. */
            orderNumber: number | null;
            orderId: string | null;
            deliveryId: string | null;
            /** @description When the goods came. */
            deliveredAt: string | null;
        };
        ClaimView: {
            id: string;
            supplierId: string;
            supplierName: string;
            orderLineId: string | null;
            deliveryLineId: string | null;
            lotId: string | null;
            goods: components["schemas"]["ClaimedGoodsView"];
            /** @enum {string} */
            reason: "other" | "broken seal" | "damaged package" | "short date" | "too few" | "not ordered";
            pieces: number;
            amountMinor: number | null;
            currency: string | null;
            /** @enum {string} */
            state: "sent" | "settled" | "open" | "dropped";
            steps: ("change" | "drop" | "send" | "settle")[];
            settledMinor: number | null;
            hasNote: boolean;
            version: number;
            createdAt: string;
            sentAt: string | null;
            endedAt: string | null;
        };
        ClaimPageView: {
            items: components["schemas"]["ClaimView"][];
            /** @description Give it as `after` for the next page; null on the last. */
            next: string | null;
        };
        ShortDateView: {
            useBy: string;
            /** @description On arrival; negative: it was past. */
            daysLeft: number;
            /** @description By the offer; null: it was past, whatever the offer says. */
            promisedDays: number | null;
        };
        ClaimSuggestionView: {
            supplierId: string;
            supplierName: string;
            orderLineId: string | null;
            deliveryLineId: string | null;
            lotId: string | null;
            goods: components["schemas"]["ClaimedGoodsView"];
            /** @enum {string} */
            reason: "other" | "broken seal" | "damaged package" | "short date" | "too few" | "not ordered";
            pieces: number;
            /** @description What the pieces cost; null: not known. */
            amountMinor: number | null;
            currency: string | null;
            /** @description Of a date that is too short; else null. */
            shortDate: components["schemas"]["ShortDateView"] | null;
            /** @description Why, in a sentence. */
            why: string;
        };
        ClaimSuggestionsView: {
            /** @description The latest delivery first. */
            items: components["schemas"]["ClaimSuggestionView"][];
            /** @description Whether there are more than are shown. */
            more: boolean;
        };
        ShownClaimView: {
            id: string;
            supplierId: string;
            supplierName: string;
            orderLineId: string | null;
            deliveryLineId: string | null;
            lotId: string | null;
            goods: components["schemas"]["ClaimedGoodsView"];
            /** @enum {string} */
            reason: "other" | "broken seal" | "damaged package" | "short date" | "too few" | "not ordered";
            pieces: number;
            amountMinor: number | null;
            currency: string | null;
            /** @enum {string} */
            state: "sent" | "settled" | "open" | "dropped";
            steps: ("change" | "drop" | "send" | "settle")[];
            settledMinor: number | null;
            hasNote: boolean;
            version: number;
            createdAt: string;
            sentAt: string | null;
            endedAt: string | null;
            /** @description Shown to those who may place orders; null: there is none, or it is not shown. */
            note: string | null;
        };
        OpenClaimDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** Format: uuid */
            supplierId: string;
            /** Format: uuid */
            orderLineId?: string | null;
            /** Format: uuid */
            deliveryLineId?: string | null;
            /** Format: uuid */
            lotId?: string | null;
            /** @description For the supplier; no client is named here. It is kept sealed. */
            note?: string | null;
            /** @enum {string} */
            reason: "broken seal" | "damaged package" | "short date" | "too few" | "not ordered" | "other";
            pieces: number;
            /** @description What is asked for, minor units of the studio's currency; null: not said. */
            amountMinor?: number | null;
            /** @description Claim also what is claimed already for the same reason. Left out: that is refused. */
            again?: boolean;
        };
        ChangeClaimDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            version: number;
            /** @description Null: none any more. */
            note?: string | null;
            pieces?: number;
            amountMinor?: number | null;
        };
        ClaimStepDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            version: number;
        };
        SettleClaimDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            version: number;
            /** @description What the supplier made good, minor units of the claim's currency; null: goods, or not said. */
            settledMinor?: number | null;
        };
        ReplayView: {
            id: string;
            /** @enum {string} */
            state: "cancelled" | "waiting" | "running" | "done" | "failed";
            /** @description The day before which it looks back, ISO. */
            plannedOn: string;
            askedAt: string;
            endedAt: string | null;
            /** @description Why it failed. */
            failure: string | null;
            /** @description Steps done, and in all; null: not known yet. */
            stepsDone: number | null;
            steps: number | null;
            version: number;
        };
        RecordTooShortView: {
            recordedDays: number;
            neededDays: number;
        };
        ReplaySumsView: {
            /** @description Over items: a day on which two were missing counts twice. */
            shortDays: number;
            /** @description Items that were ever missing. */
            shortItems: number;
            wasteMinor: number;
            orders: number;
            /** @description What was left in the end would cost so much anew; it is in no cost. */
            endMinor: number;
            costMinor: number;
        };
        FixedLevelsView: {
            minimumUnits: number;
            maximumUnits: number;
            /** @description Whether the minimum is the level that somebody set; else it is 1.5 times the need of a lead time and a week. */
            byHand: boolean;
        };
        ReplayOutcomeView: {
            /** @description Days on which something needed was missing, and how much of it in all. */
            shortDays: number;
            unmetUnits: number;
            wasteUnits: number;
            wasteMinor: number;
            orders: number;
            orderedUnits: number;
            /** @description What was left in the end, and what it would cost anew. */
            endUnits: number;
            endMinor: number;
            /** @description Waste, shortages, orders and keeping; not the goods themselves. */
            costMinor: number;
        };
        ReplayItemView: {
            /** @enum {string} */
            itemKind: "product" | "configuration";
            itemKey: string;
            label: string;
            /** @enum {string} */
            unit: "pieces" | "microlitres";
            /** @description The first day, ISO; later than that of the whole when the item is newer. */
            from: string;
            neededUnits: number;
            fixedLevels: components["schemas"]["FixedLevelsView"];
            plan: components["schemas"]["ReplayOutcomeView"];
            asOrdered: components["schemas"]["ReplayOutcomeView"];
            fixed: components["schemas"]["ReplayOutcomeView"];
        };
        ReplayCalibrationView: {
            /** @description 0 to 1. */
            level: number;
            /** @description Weeks of items that were foretold. */
            forecasts: number;
            /** @description Of them: how often it was enough. */
            enough: number;
            /** @description How often it should have been, 0 to 1: units are whole, so it is the level or more. */
            claimed: number;
            /** @description Of the share that was enough, if forecasts were right and independent. */
            standardError: number;
            /** @enum {string} */
            verdict: "too seldom" | "as claimed" | "too often" | "too few to tell";
        };
        ReplayAssumptionView: {
            code: string;
            figures: {
                [key: string]: number;
            };
            /** @description An English sentence. */
            message: string;
        };
        ReplayResultView: {
            /** @description Null: the record is long enough. Else nothing was replayed. */
            tooShort: components["schemas"]["RecordTooShortView"] | null;
            /** @description The first and the last day, ISO. */
            from: string;
            until: string;
            weeks: number;
            currency: string;
            items: number;
            /** @description Left out since nobody offers them, and since there are more than are replayed. */
            itemsWithoutOffer: number;
            itemsBeyondLimit: number;
            plan: components["schemas"]["ReplaySumsView"];
            asOrdered: components["schemas"]["ReplaySumsView"];
            fixed: components["schemas"]["ReplaySumsView"];
            /** @description At most 200, those with the largest difference between the plan and what was ordered first. */
            lines: components["schemas"]["ReplayItemView"][];
            calibration: components["schemas"]["ReplayCalibrationView"][];
            /** @description Weeks that were foretold, of each item. */
            calibrationWeeks: number;
            assumptions: components["schemas"]["ReplayAssumptionView"][];
            runningSeconds: number;
        };
        ReplaysView: {
            /** @description The latest that was asked for, whatever became of it; null: none was. */
            run: components["schemas"]["ReplayView"] | null;
            /** @description The latest that is done; null: none is. */
            done: components["schemas"]["ReplayView"] | null;
            /** @description Of `done`. */
            result: components["schemas"]["ReplayResultView"] | null;
        };
        MakeReplayDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
        };
        ExtraSessionsDto: {
            /** Format: uuid */
            procedureId: string;
            /**
             * Format: date
             * @description YYYY-MM-DD, from today on.
             */
            on: string;
        };
        WhatIfDto: {
            itemKey?: string;
            /**
             * @description Only this item is computed: its kind, with its key.
             * @enum {string}
             */
            itemKind?: "product" | "configuration";
            serviceTargetPerMille?: number;
            /** @description All lead times, times this; 1000: as they are. */
            leadTimePerMille?: number;
            /** @description All prices, times this; 1000: as they are. */
            pricePerMille?: number;
            /** @description Bookings and what nobody has booked yet, times this; 1000: as they are. */
            bookingsPerMille?: number;
            extraSessions?: components["schemas"]["ExtraSessionsDto"][];
        };
        MakePlanDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * @description `what if`: with something supposed to be different; nothing is ordered from it.
             * @enum {string}
             */
            purpose: "plan" | "what if";
            whatIf?: components["schemas"]["WhatIfDto"];
        };
        ExtraSessionsView: {
            procedureId: string;
            on: string;
            /** @description Negative: so many fewer. */
            sessions: number;
        };
        WhatIfView: {
            /**
             * @description Only this item is computed.
             * @enum {string|null}
             */
            itemKind: "product" | "configuration" | null;
            itemKey: string | null;
            serviceTargetPerMille: number | null;
            /** @description All lead times, times this; 1000: as they are. */
            leadTimePerMille: number | null;
            /** @description Added to all lead times; negative: so many fewer. */
            leadTimeExtraDays: number | null;
            pricePerMille: number | null;
            /** @description Bookings and what nobody has booked yet, times this. */
            bookingsPerMille: number | null;
            extraSessions: components["schemas"]["ExtraSessionsView"][];
        };
        PlanView: {
            id: string;
            /**
             * @description `replay` only in the answer to ending one: it is not among the plans.
             * @enum {string}
             */
            purpose: "plan" | "what if" | "replay";
            whatIf: components["schemas"]["WhatIfView"] | null;
            /** @enum {string} */
            state: "cancelled" | "waiting" | "running" | "done" | "failed";
            /** @description The studio's local day it starts from. */
            plannedOn: string;
            askedAt: string;
            /** @description Null: the service by itself, by night. */
            personId: string | null;
            endedAt: string | null;
            /** @description Why it failed. */
            failure: string | null;
            /** @description The plan whose lines are shown: all facts were the same. */
            sameAsId: string | null;
            /** @description Items computed so far, and in all; null: not known yet, or not known any more. */
            itemsDone: number | null;
            items: number | null;
            /** @description From when it began to run; of one that ended, what it took. */
            runningSeconds: number | null;
            /** @description Lines with something to order today. */
            dueToday: number | null;
            version: number;
        };
        PlanPageView: {
            items: components["schemas"]["PlanView"][];
            /** @description Give it as `after` for the next page; null: this is the last. */
            next: string | null;
        };
        DecisionCountView: {
            /** @enum {string} */
            decision: "order for the appointment" | "let run out" | "order now" | "order later" | "enough" | "cannot be ordered";
            lines: number;
        };
        PlanSumsView: {
            lines: number;
            decisions: components["schemas"]["DecisionCountView"][];
            currency: string;
            /** @description Of what is to be ordered today, without and with delivery. */
            orderTodayMinor: number;
            orderTodayWithDeliveryMinor: number;
            /** @description Over the days looked ahead, if the plan is followed. */
            expectedWasteMinor: number;
            /** @description Containers that are held, and left out. */
            heldContainers: number;
            /** @description Items of the register that nobody used, has, offers or lists in a kit. */
            itemsLeftOut: number;
            /** @description Policies that were tried on all items. */
            candidates: number;
            /** @description Lines taken over from an earlier plan, since their facts were the same. */
            linesTakenOver: number;
            paths: number;
            days: number;
        };
        BasketLineView: {
            lineNumber: number;
            label: string;
            productId: string;
            offerId: string;
            packs: number;
            /** @description Packs of the item by itself, 0 when it was not due. */
            ownPacks: number;
            ownOn: string | null;
            packPriceMinor: number;
            priceMinor: number;
            /** @description Part of the delivery, by price. */
            deliveryShareMinor: number;
            /** @description Why it is here, or why more packs than its own. */
            reasons: ("due" | "shares the delivery" | "reaches the minimum" | "reaches free delivery")[];
            /** @description Expected extra cost of being here and of being more, and what that spares. */
            extraMinor: number;
            sparedMinor: number;
        };
        MinimumChoiceView: {
            /** @enum {string} */
            choice: "add" | "wait" | "order anyway";
            missingMinor: number | null;
            until: string | null;
            /** @description The line to add to. */
            lineNumber: number | null;
            packs: number | null;
            priceMinor: number | null;
            extraMinor: number | null;
        };
        BasketView: {
            supplierId: string;
            supplierName: string;
            on: string;
            lines: components["schemas"]["BasketLineView"][];
            goodsMinor: number;
            deliveryMinor: number;
            totalMinor: number;
            currency: string;
            /** @enum {string} */
            minimumState: "reached" | "none" | "reached by adding" | "not reached";
            minimumMinor: number | null;
            minimumMissingMinor: number;
            minimumChoices: components["schemas"]["MinimumChoiceView"][];
            /** @description Null: delivery is never free. */
            freeDeliveryFromMinor: number | null;
            freeDeliveryMissingMinor: number | null;
        };
        PlanAssumptionView: {
            code: string;
            /** @description By name; amounts of money in minor units. */
            figures: {
                [key: string]: unknown;
            };
            /** @description An English sentence. */
            message: string;
            /** @description How many items it was taken for; null: it is of the whole studio, or of the one line it stands in. */
            items: number | null;
        };
        PlanDetailView: {
            id: string;
            /**
             * @description `replay` only in the answer to ending one: it is not among the plans.
             * @enum {string}
             */
            purpose: "plan" | "what if" | "replay";
            whatIf: components["schemas"]["WhatIfView"] | null;
            /** @enum {string} */
            state: "cancelled" | "waiting" | "running" | "done" | "failed";
            /** @description The studio's local day it starts from. */
            plannedOn: string;
            askedAt: string;
            /** @description Null: the service by itself, by night. */
            personId: string | null;
            endedAt: string | null;
            /** @description Why it failed. */
            failure: string | null;
            /** @description The plan whose lines are shown: all facts were the same. */
            sameAsId: string | null;
            /** @description Items computed so far, and in all; null: not known yet, or not known any more. */
            itemsDone: number | null;
            items: number | null;
            /** @description From when it began to run; of one that ended, what it took. */
            runningSeconds: number | null;
            /** @description Lines with something to order today. */
            dueToday: number | null;
            version: number;
            /** @description Null: not done. */
            sums: components["schemas"]["PlanSumsView"] | null;
            baskets: components["schemas"]["BasketView"][];
            assumptions: components["schemas"]["PlanAssumptionView"][];
        };
        PlannedItemView: {
            /** @enum {string} */
            kind: "product" | "configuration";
            /** @description A product id, or the key of a configuration. */
            key: string;
            /** @enum {string} */
            unit: "pieces" | "microlitres";
            /** @description As people call it. */
            label: string;
            /** @description One, or all that stand for each other. */
            productIds: string[];
            productName: string | null;
            shade: string | null;
            makerName: string | null;
        };
        ShortOnView: {
            early: string | null;
            middle: string | null;
            late: string | null;
        };
        LineLevelView: {
            /** @description Pieces: containers of a bottle. Null: nothing sensible can be said. */
            minimumPieces: number | null;
            /** @description As it stands; null: none is set. */
            currentPieces: number | null;
            /** @description True: somebody set it by hand, and the plan leaves it unless it is named. */
            setByHand: boolean;
        };
        PlanLineSummaryView: {
            lineNumber: number;
            item: components["schemas"]["PlannedItemView"];
            /** @enum {string} */
            decision: "order for the appointment" | "let run out" | "order now" | "order later" | "enough" | "cannot be ordered";
            orderOn: string | null;
            /** @description Half of such deliveries are there by then, and 95 % by `arrivesLate`. */
            arrivesOn: string | null;
            arrivesLate: string | null;
            supplierId: string | null;
            supplierName: string | null;
            offerId: string | null;
            productId: string | null;
            packs: number;
            containers: number;
            /** @description Units of what is ordered. */
            orderedUnits: number;
            costMinor: number | null;
            currency: string | null;
            /** @description What it costs not to follow the line: by this lines are ordered. */
            stakeMinor: number;
            usableUnits: number;
            onTheWayUnits: number;
            unitsPerWeek: number;
            /** @description If nothing is ordered, 0 to 1. */
            shortChance: number;
            shortOn: components["schemas"]["ShortOnView"];
            /** @description If the plan is followed. */
            shortChanceAfter: number;
            expectedWasteMinor: number;
            /** @description Days that what is here and coming is expected to last. */
            coverDays: number;
            /** @description One sentence. */
            sentence: string;
            /** @description Codes of what is worth a look. */
            notes: string[];
            level: components["schemas"]["LineLevelView"];
        };
        PlanLinePageView: {
            planId: string;
            items: components["schemas"]["PlanLineSummaryView"][];
            /** @description Give it as `afterLine` for the next page; null: this is the last. */
            next: number | null;
        };
        MethodWeightView: {
            method: string;
            weight: number;
            /** @description Mean logarithmic score of having foretold the past, negated: smaller is better; null: nothing could be scored. */
            score: number | null;
        };
        DemandWeekView: {
            from: string;
            knownUnits: number;
            halfKnownUnits: number;
            unforeseenUnits: number;
        };
        LineDemandView: {
            /** @description Expected units over the days looked ahead. */
            knownUnits: number;
            halfKnownUnits: number;
            unforeseenUnits: number;
            unitsPerWeek: number;
            /** @description smooth, erratic, intermittent or lumpy; null: too little is known. */
            seriesClass: string | null;
            averageDemandInterval: number | null;
            sizeVariation: number | null;
            methods: components["schemas"]["MethodWeightView"][];
            /** @description Weeks with and without use that were looked at. */
            weeksOfHistory: number;
            /** @description Expected units by day from the day of the plan, booked and owed apart from the rest. */
            byWeek: components["schemas"]["DemandWeekView"][];
        };
        DaysToArrivalView: {
            /** @description Days and how likely each is. */
            days: number[];
            weights: number[];
            meanDays: number;
            /** @description Nineteen of twenty orders take no longer. */
            days95: number;
        };
        LineSupplyView: {
            supplierId: string | null;
            supplierName: string | null;
            offerId: string | null;
            productId: string | null;
            packContainers: number | null;
            /** @description Units in each container. */
            containerUnits: number | null;
            minimumPacks: number | null;
            packPriceMinor: number | null;
            unitPriceMinor: number | null;
            currency: string | null;
            leadTime: components["schemas"]["DaysToArrivalView"] | null;
            lifeOnArrivalDays: number | null;
            /** @description Other offers that were tried. */
            otherOffers: number;
        };
        LineStockView: {
            usableUnits: number;
            containers: number;
            opened: number;
            /** @description Held, and left out. */
            heldContainers: number;
            heldUnits: number;
            /** @description Expired or open too long, and left out. */
            expiredContainers: number;
            practiceContainers: number;
            onTheWayUnits: number;
            /** @description The last day of what ends first. */
            nextLastDay: string | null;
        };
        LineOutlookView: {
            /** @description The last day looked at. */
            until: string;
            /** @description That something needed is missing at least once, 0 to 1. */
            shortChance: number;
            shortOn: components["schemas"]["ShortOnView"];
            expectedUnmetUnits: number;
            /** @description What expires or is discarded, of what is here, coming and ordered; also after `until`. */
            expectedWasteUnits: number;
            expectedWasteMinor: number;
            /** @description Days that what is here and coming (and ordered first) is expected to last without a later order. */
            coverDays: number;
        };
        FanView: {
            days: string[];
            p5: number[];
            p25: number[];
            p50: number[];
            p75: number[];
            p95: number[];
        };
        OwnOrderView: {
            packs: number;
            on: string | null;
            expectedUnmetUnits: number;
            expectedWasteUnits: number;
        };
        LineCostView: {
            totalMinor: number;
            wasteMinor: number;
            shortageMinor: number;
            orderMinor: number;
            holdingMinor: number;
            /** @description What the packs cost more (or less) than at the price of comparison. */
            priceMinor: number;
            /** @description What is left at the end spares a part of a later order: at most 0. */
            leftMinor: number;
            standardErrorMinor: number;
        };
        NeighbourView: {
            /** @enum {string} */
            change: "one pack less" | "one pack more" | "one order day earlier" | "one order day later";
            packs: number;
            on: string;
            cost: components["schemas"]["LineCostView"];
            /** @description Against what was chosen. */
            extraMinor: number;
            expectedUnmetUnits: number;
            expectedWasteUnits: number;
        };
        OfferComparisonView: {
            offerId: string;
            productId: string;
            supplierId: string;
            supplierName: string;
            /** @description Of the best that can be done with it. */
            packs: number;
            on: string | null;
            expectedCostMinor: number;
        };
        ShortageCostView: {
            /** @enum {string} */
            from: "service target" | "set by hand";
            minorPerUnit: number;
            /** @description Of one usual need. */
            minorPerNeed: number;
            usualUnitsPerNeed: number;
        };
        EffortView: {
            /** @description Orders weighed against each other, of all offers. */
            candidates: number;
            coarsePaths: number;
            paths: number;
            horizonDays: number;
            tailDays: number;
        };
        RangeChoiceView: {
            /** @enum {string} */
            choice: "keep in stock" | "order for the appointment" | "let run out";
            costPerYearMinor: number;
            /** @description Null where nothing would be used. */
            costPerUsedUnitMinor: number | null;
            /** @description Of one session that wants it, whether it gets it or not. */
            costPerSessionMinor: number | null;
            purchasesMinorPerYear: number;
            deliveriesPerYear: number;
            wasteUnitsPerYear: number;
            wasteMinorPerYear: number;
            unmetSessionsPerYear: number;
        };
        RangeDecisionView: {
            /**
             * @description What counts.
             * @enum {string}
             */
            choice: "keep in stock" | "order for the appointment" | "let run out";
            /**
             * @description What the figures say; the manager's own choice wins over it.
             * @enum {string}
             */
            advised: "keep in stock" | "order for the appointment" | "let run out";
            /**
             * @description Service target: the way that costs least of those that meet it. Too seldom: fewer than one use is expected while a pack
             *     keeps, so it is not kept. Cost: the way that costs least of all.
             * @enum {string}
             */
            chosenBy: "manager" | "service target" | "too seldom" | "cost";
            sessionsPerYear: number;
            /** @description Share of uses that are booked early enough to order for them. */
            bookedInTime: number;
            appointmentPossible: boolean;
            options: components["schemas"]["RangeChoiceView"][];
        };
        PlanReasonView: {
            code: string;
            /** @description By name; nested lists only where the code says so. */
            figures: {
                [key: string]: unknown;
            };
            message: string;
        };
        PlanLineView: {
            lineNumber: number;
            item: components["schemas"]["PlannedItemView"];
            /** @enum {string} */
            decision: "order for the appointment" | "let run out" | "order now" | "order later" | "enough" | "cannot be ordered";
            orderOn: string | null;
            /** @description Half of such deliveries are there by then, and 95 % by `arrivesLate`. */
            arrivesOn: string | null;
            arrivesLate: string | null;
            supplierId: string | null;
            supplierName: string | null;
            offerId: string | null;
            productId: string | null;
            packs: number;
            containers: number;
            /** @description Units of what is ordered. */
            orderedUnits: number;
            costMinor: number | null;
            currency: string | null;
            /** @description What it costs not to follow the line: by this lines are ordered. */
            stakeMinor: number;
            usableUnits: number;
            onTheWayUnits: number;
            unitsPerWeek: number;
            /** @description If nothing is ordered, 0 to 1. */
            shortChance: number;
            shortOn: components["schemas"]["ShortOnView"];
            /** @description If the plan is followed. */
            shortChanceAfter: number;
            expectedWasteMinor: number;
            /** @description Days that what is here and coming is expected to last. */
            coverDays: number;
            /** @description One sentence. */
            sentence: string;
            /** @description Codes of what is worth a look. */
            notes: string[];
            level: components["schemas"]["LineLevelView"];
            demand: components["schemas"]["LineDemandView"];
            supply: components["schemas"]["LineSupplyView"];
            stock: components["schemas"]["LineStockView"];
            /** @description If nothing more is ordered. */
            without: components["schemas"]["LineOutlookView"];
            /** @description With the order, and later ones by the reorder point. */
            after: components["schemas"]["LineOutlookView"];
            fanWithout: components["schemas"]["FanView"] | null;
            fanAfter: components["schemas"]["FanView"] | null;
            /** @description The order it would be by itself, to which the costs belong; null: it is ordered as it would be by itself. */
            byItself: components["schemas"]["OwnOrderView"] | null;
            costChosen: components["schemas"]["LineCostView"];
            costOfNothing: components["schemas"]["LineCostView"];
            neighbours: components["schemas"]["NeighbourView"][];
            offers: components["schemas"]["OfferComparisonView"][];
            shortageCost: components["schemas"]["ShortageCostView"];
            effort: components["schemas"]["EffortView"];
            range: components["schemas"]["RangeDecisionView"] | null;
            reasons: components["schemas"]["PlanReasonView"][];
            remarks: components["schemas"]["PlanReasonView"][];
            assumptions: components["schemas"]["PlanAssumptionView"][];
            serviceTargetPerMille: number;
            /** @description The plan this line was taken over from; null: it was computed for this one. */
            takenOverFromId: string | null;
        };
        CancelPlanDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
        };
        TakeLevelsDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description Which lines; left out: all whose level nobody set by hand. Named ones are taken even then. */
            lineNumbers?: number[];
        };
        LevelTakenView: {
            lineNumber: number;
            /** @enum {string} */
            subjectKind: "product" | "configuration";
            subjectId: string;
            label: string;
            /** @description Null: none was set. */
            before: number | null;
            after: number;
            /** @enum {string} */
            outcome: "set" | "unchanged" | "left, since it was set by hand";
        };
        LevelsTakenView: {
            planId: string;
            items: components["schemas"]["LevelTakenView"][];
        };
        ContainerFindingView: {
            id: string;
            /** @enum {string} */
            result: "found" | "not found";
            /** @description Where it was put aside; in a drill where it would have been. */
            placeId: string | null;
            tag: string | null;
            photoId: string | null;
            note: string | null;
            occurredAt: string;
            personId: string | null;
        };
        DispositionView: {
            id: string;
            /** @enum {string} */
            kind: "returned" | "destroyed";
            /** @description Null: the book had nothing left of it. */
            movementId: string | null;
            pieces: number;
            /** @description An estimate. */
            microlitres: number;
            witnessId: string | null;
            photoId: string | null;
            reference: string;
            occurredAt: string;
            personId: string | null;
        };
        RecallTrayView: {
            sessionId: string;
            /** @description Pieces of a box that are reserved; 0: a bottle that is shared. */
            pieces: number;
        };
        RecallContainerView: {
            containerId: string;
            labelCode: string;
            /** @enum {string} */
            form: "bottle" | "box";
            /** @enum {string} */
            state: "opened" | "sealed" | "finished" | "discarded" | "practice only";
            productId: string;
            productName: string;
            shade: string | null;
            makerName: string;
            lotId: string;
            lotCode: string | null;
            useBy: string | null;
            /**
             * @description Of the lot of the recall that is in it; `affected` when there is one of each.
             * @enum {string}
             */
            lotStanding: "affected" | "undecided";
            /** @description Whether it is a house blend in which a lot of the recall is. */
            throughBlend: boolean;
            placeId: string;
            placeName: string;
            /** @enum {string} */
            placeKind: "shelf" | "treatment room" | "travelling case" | "practice shelf" | "set aside";
            /** @description The artist whose it is; null: the studio's. */
            ownerId: string | null;
            openedAt: string | null;
            /** @description Left by the book. */
            pieces: number;
            /** @description An estimate. */
            microlitres: number;
            /**
             * @description `gone`: nothing is left of it, and not by a disposition.
             * @enum {string}
             */
            standing: "found" | "not found" | "not looked for" | "disposed" | "gone";
            /** @description The latest look for it; null: nobody looked yet. */
            finding: components["schemas"]["ContainerFindingView"] | null;
            /** @description The earliest first, at most 100. */
            dispositions: components["schemas"]["DispositionView"][];
            /** @description At most 100. */
            trays: components["schemas"]["RecallTrayView"][];
        };
        RecallContainerTotalsView: {
            containers: number;
            notLookedFor: number;
            found: number;
            notFound: number;
            disposed: number;
            gone: number;
            /** @description Left by the book, in all. */
            piecesLeft: number;
            /** @description An estimate. */
            microlitresLeft: number;
        };
        RecallContainerPageView: {
            items: components["schemas"]["RecallContainerView"][];
            /** @description Hand it in as `after` for the next page; null: this was the last. */
            next: string | null;
            /** @description Of all containers, whatever the page shows. */
            totals: components["schemas"]["RecallContainerTotalsView"];
        };
        RecordFindingDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /**
             * Format: uuid
             * @description Where it was put aside: it is moved there. Only of what was found.
             */
            placeId?: string;
            /** @description What was written on the tag. */
            tag?: string;
            /** Format: uuid */
            photoId?: string;
            /** @description What was seen. Of the thing and never of a client: it is kept in the clear. */
            note?: string;
            /** @enum {string} */
            result: "found" | "not found";
        };
        RecordedFindingView: {
            finding: components["schemas"]["ContainerFindingView"];
            /** @description Whether it was moved to the named place; not in a drill, and not when it is gone by the record. */
            moved: boolean;
            /** @description What the person should know; what was seen is recorded all the same. */
            warnings: string[];
        };
        RecordDispositionDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /**
             * Format: uuid
             * @description Another person who saw it. Either a witness or a photo is needed.
             */
            witnessId?: string;
            /** Format: uuid */
            photoId?: string;
            /** @description Number of the consignment or of the certificate of destruction. */
            reference: string;
            /** @description Why so. Of the thing and never of a client: it is kept in the clear. */
            reason?: string;
            /** @enum {string} */
            kind: "returned" | "destroyed";
            /** @description Of a box: so many pieces; left out: all that is left. */
            pieces?: number;
        };
        RecordedDispositionView: {
            disposition: components["schemas"]["DispositionView"];
            warnings: string[];
        };
        BalanceFigureView: {
            /**
             * @description `counted more` and `counted fewer`: adjustments, those for more use than the book had among them.
             * @enum {string}
             */
            kind: "received" | "produced" | "transferred in" | "used" | "blended" | "wasted" | "returned" | "transferred out" | "counted more" | "emptied" | "counted fewer" | "moved between boxes";
            /** @description Exact. Positive for what the word says; 0 for what was only moved from box to box. */
            pieces: number;
            /** @description An estimate. */
            microlitres: number;
            /** @description How many movements are behind it. */
            movements: number;
        };
        BalanceQuantityView: {
            pieces: number;
            /** @description An estimate. */
            microlitres: number;
        };
        UnexplainedView: {
            /**
             * @description `not looked for` is still to be found; `lost on the way`: sent to another studio, where it did not arrive.
             * @enum {string}
             */
            reason: "not found" | "not looked for" | "counted more" | "counted fewer" | "lost on the way" | "on ended containers";
            pieces: number;
            /** @description An estimate. */
            microlitres: number;
        };
        OtherEndView: {
            /** @enum {string} */
            direction: "from" | "to";
            studioId: string;
            studioName: string;
            /** @description The lot there; null while it is on its way. */
            lotId: string | null;
            pieces: number;
            /** @description An estimate. */
            microlitres: number;
            /** @enum {string} */
            state: "arrived" | "turned up" | "withdrawn" | "in transit";
        };
        LotBalanceView: {
            lotId: string;
            productId: string;
            productName: string;
            shade: string | null;
            makerName: string;
            lotCode: string | null;
            useBy: string | null;
            /**
             * @description Of the lot of the recall that is in it.
             * @enum {string}
             */
            standing: "affected" | "undecided";
            /** @description Whether it is a house blend in which a lot of the recall is. */
            isBlend: boolean;
            figures: components["schemas"]["BalanceFigureView"][];
            /** @description By the ledger: the sum of all movements. */
            onHand: components["schemas"]["BalanceQuantityView"];
            /** @description Of what is on hand: found by somebody who looked for it. */
            found: components["schemas"]["BalanceQuantityView"];
            /** @description All that came in, what was counted beyond it included. */
            cameIn: components["schemas"]["BalanceQuantityView"];
            /** @description What neither left nor was found. */
            notAccounted: components["schemas"]["BalanceQuantityView"];
            unexplained: components["schemas"]["UnexplainedView"][];
            /** @description How much of the pieces is explained, whole percent rounded down; null: the book never had a piece. */
            balancedPercent: number | null;
            reachedThroughBlends: {
                shareMicrolitres: number;
            };
            /** @description At most 200. */
            otherEnds: components["schemas"]["OtherEndView"][];
        };
        BalanceTotalsView: {
            lots: number;
            onHand: components["schemas"]["BalanceQuantityView"];
            found: components["schemas"]["BalanceQuantityView"];
            cameIn: components["schemas"]["BalanceQuantityView"];
            notAccounted: components["schemas"]["BalanceQuantityView"];
            unexplained: components["schemas"]["UnexplainedView"][];
            balancedPercent: number | null;
        };
        RecallBalanceView: {
            /** @description The affected and the undecided lots first, house blends after them. */
            items: components["schemas"]["LotBalanceView"][];
            /** @description Hand it in as `after` for the next page; null: this was the last. */
            next: string | null;
            /** @description Of all lots of the recall, whatever the page shows. */
            totals: components["schemas"]["BalanceTotalsView"];
            /** @description Of all house blends in which they are. */
            blendTotals: components["schemas"]["BalanceTotalsView"];
        };
        BalanceMovementPageView: {
            items: components["schemas"]["MovementView"][];
            /** @description Hand it in as `after` for the next page; null: this was the last. */
            next: string | null;
        };
        ReadNoticeFileDto: {
            /** @description As it stands in the file, up to 4,000,000 characters. */
            text: string;
            /**
             * @description A table by the columns of the documentation, enforcement reports as openFDA writes them, or a weekly report.
             * @enum {string}
             */
            kind: "csv" | "enforcement json" | "safety gate xml";
            /** @description From which notice of the file on, by the `next` of the answer before; left out: from the first. */
            after?: number;
        };
        DaySpanView: {
            from: string | null;
            through: string | null;
        };
        LotTermView: {
            /** @enum {string} */
            kind: "code" | "use-by" | "all lots" | "code range" | "manufactured";
            code?: string;
            from?: string;
            through?: string;
            useBy?: components["schemas"]["DaySpanView"] | null;
            manufactured?: components["schemas"]["DaySpanView"];
        };
        ScopeItemView: {
            makerName: string | null;
            productName: string | null;
            shade: string | null;
            gtins: string[];
            productIds: string[];
            lots: components["schemas"]["LotTermView"][];
            openEnded: boolean;
        };
        LotScopeView: {
            items: components["schemas"]["ScopeItemView"][];
        };
        TextSpanView: {
            start: number;
            end: number;
        };
        PartTargetView: {
            item: number;
            lot: number | null;
        };
        ReadPartView: {
            /** @enum {string} */
            kind: "maker" | "product" | "code" | "shade" | "reference" | "gtin" | "use-by" | "open-ended" | "all lots" | "code range" | "manufactured" | "classification" | "risk" | "remedy" | "issued on";
            /** @description In the text as it was given, UTF-16. */
            span: components["schemas"]["TextSpanView"];
            value: string;
            targets: components["schemas"]["PartTargetView"][];
        };
        RemarkFactsView: {
            /** @description As it is written, cut to 80 characters. */
            seen?: string;
            readAs?: string;
            /** @description What else it could mean. */
            otherReadings?: string[];
            count?: number;
            allowed?: number;
        };
        NoticeRemarkView: {
            code: string;
            span: components["schemas"]["TextSpanView"] | null;
            facts: components["schemas"]["RemarkFactsView"];
            message: string;
        };
        FileNoticeView: {
            /** @description Which of the file, from 1; of a table the row, as a spreadsheet counts it. */
            number: number;
            /** @description Everything that stands there, a line a field. */
            text: string;
            scope: components["schemas"]["LotScopeView"];
            /** @description Stretches of the text and what they were read as; none where fields of their own said all. */
            parts: components["schemas"]["ReadPartView"][];
            remarks: components["schemas"]["NoticeRemarkView"][];
            reference: string | null;
            /** @description Who published it. */
            issuer: string | null;
            issuedOn: string | null;
            classification: string | null;
            risk: string | null;
            remedy: string | null;
            /** @description How many lots here it means. */
            certainLots: number;
            /** @description And how many it may mean. */
            possibleLots: number;
        };
        NoticeFileView: {
            /** @description How many notices the file holds. */
            notices: number;
            /** @description In the order of the file, at most a hundred. */
            items: components["schemas"]["FileNoticeView"][];
            /** @description What to ask on with as `after`, with the file again; null: these were the last. */
            next: number | null;
        };
        ReadNoticeDto: {
            text: string;
        };
        MatchFactsView: {
            /** @description As the notice writes it. */
            named?: string | null;
            /** @description As it stands on record. */
            recorded?: string | null;
            /** @description Ends of the range or span that the notice names; null: open at that end. */
            from?: string | null;
            through?: string | null;
        };
        MatchReasonView: {
            code: string;
            /** @description An English sentence. */
            message: string;
            facts: components["schemas"]["MatchFactsView"];
        };
        MatchedLotView: {
            lotId: string;
            /** @enum {string} */
            grade: "certain" | "possible";
            itemIndex: number | null;
            reasons: components["schemas"]["MatchReasonView"][];
            productId: string;
            makerName: string;
            productName: string;
            shade: string | null;
            code: string | null;
            useBy: string | null;
            onHandPieces: number;
            /** @description By the book, an estimate. */
            onHandMicrolitres: number;
            /** @description Bottles and boxes that are here. */
            containers: number;
            /** @description Clients it touched, directly or through a mix; through house blends is told by the recall itself. */
            clients: number;
        };
        MatchedLotsView: {
            certainLots: number;
            possibleLots: number;
            /** @description Certain ones first, at most a thousand. */
            items: components["schemas"]["MatchedLotView"][];
        };
        NoticeReadingView: {
            scope: components["schemas"]["LotScopeView"];
            parts: components["schemas"]["ReadPartView"][];
            remarks: components["schemas"]["NoticeRemarkView"][];
            reference: string | null;
            issuedOn: string | null;
            classification: string | null;
            risk: string | null;
            remedy: string | null;
            matches: components["schemas"]["MatchedLotsView"];
        };
        DaySpanDto: {
            /** Format: date */
            from?: string;
            /** Format: date */
            through?: string;
        };
        LotTermDto: {
            code?: string;
            from?: string;
            through?: string;
            /** @enum {string} */
            kind: "all lots" | "code" | "code range" | "use-by" | "manufactured";
            /** @description The use-by dates meant; beside a code or a range it belongs to that. */
            useBy?: components["schemas"]["DaySpanDto"];
            manufactured?: components["schemas"]["DaySpanDto"];
        };
        ScopeItemDto: {
            makerName?: string;
            productName?: string;
            shade?: string;
            /** @description 14 digits each, shorter ones with zeros before them. */
            gtins: string[];
            /** @description Products of the register that are meant; names and GTINs then decide nothing more. */
            productIds: string[];
            /** @description Empty: the notice names no lots. */
            lots: components["schemas"]["LotTermDto"][];
            /** @description Lots beyond those named may be meant too. */
            openEnded: boolean;
        };
        LotScopeDto: {
            items: components["schemas"]["ScopeItemDto"][];
        };
        MatchScopeDto: {
            scope: components["schemas"]["LotScopeDto"];
        };
        WaitingNoticeView: {
            id: string;
            reference: string | null;
            /** @description How the text begins. */
            beginning: string;
            occurredAt: string;
        };
        WaitingNoticePageView: {
            /** @description The latest first. */
            items: components["schemas"]["WaitingNoticeView"][];
            next: string | null;
        };
        NoticeDismissalView: {
            reason: string;
            occurredAt: string;
            personId: string | null;
        };
        RecallNoticeView: {
            id: string;
            /** @enum {string} */
            source: "pasted" | "entered" | "csv" | "enforcement json" | "safety gate xml" | "fetched";
            reference: string | null;
            /** @description As it came. */
            text: string;
            occurredAt: string;
            personId: string | null;
            /** @description Set when somebody found that nothing is to be done. */
            dismissal: components["schemas"]["NoticeDismissalView"] | null;
        };
        DismissNoticeDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            reason: string;
        };
        DismissedNoticeView: {
            id: string;
        };
        RecallSummaryView: {
            id: string;
            /** @enum {string} */
            kind: "recall" | "drill";
            title: string;
            /** @enum {string} */
            state: "closed" | "withdrawn" | "open";
            /** @description Every studio of the chain has its part. */
            chainWide: boolean;
            openedInStudioId: string;
            openedAt: string;
            /** @description Null: in another studio of the chain. */
            openedBy: string | null;
            endedAt: string | null;
            scopeNumber: number;
            affectedLots: number;
            undecidedLots: number;
            notAffectedLots: number;
        };
        RecallPageView: {
            /** @description The latest first. */
            items: components["schemas"]["RecallSummaryView"][];
            next: string | null;
        };
        NoticeDto: {
            reference?: string;
            /** @description Kept as it came. */
            text: string;
            /** @enum {string} */
            source: "pasted" | "entered" | "csv" | "enforcement json" | "safety gate xml";
        };
        OpenRecallDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /**
             * Format: uuid
             * @description A notice that is on record already, instead.
             */
            noticeId?: string;
            /** @description Who recalls. */
            issuer?: string;
            reference?: string;
            /** Format: date */
            issuedOn?: string;
            classification?: string;
            /** @description The risk in the words of the notice. */
            risk?: string;
            /** @description What the notice offers or asks to be done. */
            remedy?: string;
            /** @description What it is called here. Never of a client: it is kept in the clear, and leaves in alerts, mail and webhooks. */
            title: string;
            /** @description Every studio of the chain has its part; for whoever leads them all. */
            chainWide?: boolean;
            /** @description The notice as it was written. */
            notice?: components["schemas"]["NoticeDto"];
            scope: components["schemas"]["LotScopeDto"];
            /**
             * @description Which of the lots that are only possibly meant are held too; left out: all of them.
             * @enum {string}
             */
            holdPossible?: "all" | "none" | "chosen";
            /** @description Those that were chosen. */
            heldLotIds?: string[];
        };
        OpenedRecallView: {
            id: string;
            certainLots: number;
            possibleLots: number;
        };
        RecallScopeView: {
            number: number;
            noticeId: string | null;
            scope: components["schemas"]["LotScopeView"];
            issuer: string | null;
            reference: string | null;
            issuedOn: string | null;
            classification: string | null;
            risk: string | null;
            remedy: string | null;
            /** @description Why it was amended; null: it is the first. */
            reason: string | null;
            occurredAt: string;
            personId: string | null;
        };
        RecallView: {
            id: string;
            /** @enum {string} */
            kind: "recall" | "drill";
            title: string;
            /** @enum {string} */
            state: "closed" | "withdrawn" | "open";
            /** @description Every studio of the chain has its part. */
            chainWide: boolean;
            openedInStudioId: string;
            openedAt: string;
            /** @description Null: in another studio of the chain. */
            openedBy: string | null;
            endedAt: string | null;
            scopeNumber: number;
            affectedLots: number;
            undecidedLots: number;
            notAffectedLots: number;
            version: number;
            /** @description The latest first, at most fifty. */
            scopes: components["schemas"]["RecallScopeView"][];
            /** @description How many lots this recall holds now, and lots that arrived and were caught. */
            heldLots: number;
            caughtLots: number;
            /** @description Whether what arrives is held too. */
            standingHold: boolean;
            /** @description Sessions in setup on whose trays a lot of the recall lies, directly or in a house blend. */
            traysReached: number;
            /** @description Why it was withdrawn. */
            withdrawalReason: string | null;
        };
        LotDecisionView: {
            /** @enum {string} */
            decision: "affected" | "not affected";
            reason: string;
            occurredAt: string;
            personId: string | null;
        };
        RecallLotView: {
            lotId: string;
            /** @enum {string} */
            grade: "certain" | "possible";
            itemIndex: number | null;
            reasons: components["schemas"]["MatchReasonView"][];
            /** @enum {string} */
            standing: "affected" | "not affected" | "undecided";
            /** @description The latest; null: none was asked for, or none made yet. */
            decision: components["schemas"]["LotDecisionView"] | null;
            /** @description Whether this recall holds it now. */
            held: boolean;
            productId: string;
            makerName: string;
            productName: string;
            shade: string | null;
            code: string | null;
            useBy: string | null;
            onHandPieces: number;
            /** @description By the book, an estimate. */
            onHandMicrolitres: number;
        };
        RecallLotPageView: {
            /** @description What waits for a decision first. */
            items: components["schemas"]["RecallLotView"][];
            next: string | null;
        };
        AmendRecallDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /**
             * Format: uuid
             * @description A notice that is on record already, instead.
             */
            noticeId?: string;
            /** @description Who recalls. */
            issuer?: string;
            reference?: string;
            /** Format: date */
            issuedOn?: string;
            classification?: string;
            /** @description The risk in the words of the notice. */
            risk?: string;
            /** @description What the notice offers or asks to be done. */
            remedy?: string;
            /** @description Why, such as "the maker added lots". */
            reason: string;
            /** @description Whether the release of holds on lots that the new scope does not meet is asked for; another person releases them. */
            releaseUnmet?: boolean;
            /** @description The notice as it was written. */
            notice?: components["schemas"]["NoticeDto"];
            scope: components["schemas"]["LotScopeDto"];
            /**
             * @description Which of the lots that are only possibly meant are held too; left out: all of them.
             * @enum {string}
             */
            holdPossible?: "all" | "none" | "chosen";
            /** @description Those that were chosen. */
            heldLotIds?: string[];
        };
        AmendedRecallView: {
            id: string;
            certainLots: number;
            possibleLots: number;
            scopeNumber: number;
        };
        DecideLotDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** @description What was seen. Of the thing and never of a client: it is kept in the clear. */
            reason: string;
            /** @enum {string} */
            decision: "affected" | "not affected";
        };
        DecidedLotView: {
            recallId: string;
            lotId: string;
            /** @enum {string} */
            decision: "affected" | "not affected";
        };
        WithdrawRecallDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            reason: string;
        };
        WithdrawnRecallView: {
            id: string;
            endedAt: string;
        };
        ExposedVisitKindView: {
            /** @enum {string} */
            visitKind: "patch test" | "first session" | "touch-up" | "refresh" | "correction" | "lightening" | "training";
            sessions: number;
            clients: number;
        };
        ExposureTotalsView: {
            clients: number;
            /** @description Clients with at least one certain exposure; all others are possible only. */
            certainClients: number;
            possibleClients: number;
            /** @description Clients who were erased: they stand under their reference and cannot be told. */
            erasedClients: number;
            sessions: number;
            certainSessions: number;
            possibleSessions: number;
            uses: number;
            certainUses: number;
            possibleUses: number;
            /** @description Of the possible uses: recorded as a lot that is not recalled, while a recalled one of the product was open that day. */
            openLotUses: number;
            /** @description Nobody knows how much of it was used. */
            unknownAmountUses: number;
            reversedUses: number;
            byVisitKind: components["schemas"]["ExposedVisitKindView"][];
        };
        ConcernedLotView: {
            lotId: string;
            makerName: string;
            productName: string;
            shade: string | null;
            lotCode: string | null;
            useBy: string | null;
            /**
             * @description Undecided: nobody has decided yet whether it is affected.
             * @enum {string}
             */
            standing: "affected" | "undecided";
            /**
             * @description As itself, within a house blend, or open on that day while the use was recorded as another lot.
             * @enum {string}
             */
            as: "house blend" | "another open lot that day" | "itself";
            /** @description What of the use was this lot's: derived, an estimate. Null: pieces, an amount not known, or another open lot. */
            shareMicrolitres: number | null;
        };
        ExposedUseView: {
            id: string;
            occurredAt: string;
            recordedAt: string;
            /** @enum {string} */
            certainty: "certain" | "possible";
            /** @description Why it is only possible; empty: certain. */
            reasons: ("lot undecided" | "lot picked from a list" | "another open lot that day")[];
            /** @description The lot it was recorded as, with its label as it was known then. */
            lotId: string;
            containerId: string;
            makerName: string;
            productName: string;
            shade: string | null;
            lotCode: string | null;
            useBy: string | null;
            /** @enum {string} */
            knownBy: "own label" | "maker's symbol" | "typed" | "picked from a list";
            pieces: number;
            drops: number | null;
            /** @description An estimate. */
            microlitres: number;
            amountKnown: boolean;
            mixId: string | null;
            /** @description By what it reached the client; empty: directly. */
            through: ("mix" | "house blend")[];
            /** @description The reasons for which it had been refused, when it was used all the same. */
            againstRefusal: string[] | null;
            /** @description The lots of the recall concerned. */
            lots: components["schemas"]["ConcernedLotView"][];
        };
        ExposedSessionView: {
            sessionId: string;
            clientId: string;
            clientReference: string;
            /** @description When the client was erased; they cannot be told then. */
            clientErasedAt: string | null;
            /** @description The studio's local day of the first such use, YYYY-MM-DD. */
            day: string;
            occurredAt: string;
            /** @enum {string} */
            visitKind: "patch test" | "first session" | "touch-up" | "refresh" | "correction" | "lightening" | "training";
            procedureId: string;
            procedureName: string;
            /** @enum {string} */
            bodyPlace: "other" | "brows" | "upper eyelids" | "lower eyelids" | "lips" | "areola" | "scalp";
            artistId: string;
            artistName: string | null;
            /**
             * @description How the session was recorded: as it happened, later, or from paper.
             * @enum {string}
             */
            recordedFrom: "paper" | "tray" | "late";
            /**
             * @description Of the most certain use.
             * @enum {string}
             */
            certainty: "certain" | "possible";
            reasons: ("lot undecided" | "lot picked from a list" | "another open lot that day")[];
            uses: components["schemas"]["ExposedUseView"][];
        };
        ExposurePageView: {
            totals: components["schemas"]["ExposureTotalsView"];
            items: components["schemas"]["ExposedSessionView"][];
            /** @description Session id; give it as `after` for the next page; null: this is the last. */
            next: string | null;
        };
        LatestContactView: {
            id: string;
            /** @enum {string} */
            channel: "telephone" | "e-mail" | "letter" | "message" | "in person";
            /** @enum {string} */
            outcome: "refused" | "reached" | "no answer" | "message left" | "unreachable";
            occurredAt: string;
        };
        ExposedClientView: {
            clientId: string;
            clientReference: string;
            /** @description When the client was erased; they cannot be told then. */
            erasedAt: string | null;
            /** @enum {string} */
            certainty: "certain" | "possible";
            sessions: number;
            certainSessions: number;
            uses: number;
            /** @description The studio's local days of the first and last exposure, YYYY-MM-DD. */
            firstDay: string;
            lastDay: string;
            /** @enum {string} */
            contactState: "refused" | "reached" | "no answer" | "message left" | "unreachable" | "not tried" | "erased, cannot be told";
            /** @description Null: nobody has tried yet. */
            latestContact: components["schemas"]["LatestContactView"] | null;
        };
        ExposedClientPageView: {
            totals: components["schemas"]["ExposureTotalsView"];
            items: components["schemas"]["ExposedClientView"][];
            /** @description Client id; give it as `after` for the next page; null: this is the last. */
            next: string | null;
        };
        PlannedLotView: {
            lotId: string;
            makerName: string;
            productName: string;
            shade: string | null;
            lotCode: string | null;
            useBy: string | null;
            /** @enum {string} */
            standing: "affected" | "undecided";
        };
        OnTrayView: {
            /** @description Null: it was taken off the tray again, while drops of it are in a cup. */
            trayLineId: string | null;
            containerId: string;
            lot: components["schemas"]["PlannedLotView"];
            /** @description Whether drops of it are in a cup. */
            inMix: boolean;
        };
        FollowedExposureView: {
            sessionId: string;
            /** @description The studio's local day, YYYY-MM-DD. */
            day: string;
            /** @enum {string} */
            certainty: "certain" | "possible";
        };
        ElseInDateView: {
            containerId: string;
            labelCode: string;
            lotId: string;
            lotCode: string | null;
            productId: string;
            /** @description Maker, product and shade. */
            label: string;
            /** @description Last usable day, YYYY-MM-DD; null: none is known. */
            lastDay: string | null;
            /** @description Pieces that lie on no tray and that no earlier session needs; a bottle is one and is shared. */
            pieces: number;
        };
        KitLineAtRiskView: {
            productId: string | null;
            configuration: string | null;
            label: string;
            quantityPieces: number;
            /** @description Whether what is left in date of other lots is enough, after what earlier sessions need. */
            enoughElse: boolean;
            /** @description The lots of the recall that first expired, first out would have taken. */
            lots: components["schemas"]["PlannedLotView"][];
            /** @description At most five. */
            elseInDate: components["schemas"]["ElseInDateView"][];
            elsePieces: number;
        };
        PlannedSessionView: {
            sessionId: string;
            clientId: string;
            clientReference: string;
            /** @enum {string} */
            state: "planned" | "in setup";
            plannedStart: string | null;
            /** @description The studio's local day, YYYY-MM-DD; null: no time is planned. */
            day: string | null;
            /** @enum {string} */
            visitKind: "patch test" | "first session" | "touch-up" | "refresh" | "correction" | "lightening" | "training";
            procedureId: string;
            procedureName: string;
            /** @enum {string} */
            bodyPlace: "other" | "brows" | "upper eyelids" | "lower eyelids" | "lips" | "areola" | "scalp";
            artistId: string;
            artistName: string | null;
            reasons: ("kit list" | "on the tray" | "follows an exposed session")[];
            onTray: components["schemas"]["OnTrayView"][];
            follows: components["schemas"]["FollowedExposureView"] | null;
            kitLines: components["schemas"]["KitLineAtRiskView"][];
        };
        PlannedSessionsView: {
            sessions: number;
            items: components["schemas"]["PlannedSessionView"][];
            /** @description Session id; give it as `after` for the next page; null: this is the last. */
            next: string | null;
            /** @description More sessions are planned than are looked through; the latest are left out. */
            morePlanned: boolean;
        };
        ClientRecallView: {
            recallId: string;
            title: string;
            /** @enum {string} */
            kind: "recall" | "drill";
            /** @enum {string} */
            state: "closed" | "withdrawn" | "open";
            openedAt: string;
            /** @enum {string} */
            certainty: "certain" | "possible";
            sessions: number;
            certainSessions: number;
            firstDay: string;
            lastDay: string;
            /** @enum {string} */
            contactState: "refused" | "reached" | "no answer" | "message left" | "unreachable" | "not tried" | "erased, cannot be told";
            latestContact: components["schemas"]["LatestContactView"] | null;
        };
        ClientRecallsView: {
            clientId: string;
            /** @description The latest first. */
            items: components["schemas"]["ClientRecallView"][];
            /** @description More recalls than are looked through name what this client was treated with; the oldest are left out. */
            moreRecalls: boolean;
        };
        AudienceTotalsView: {
            toTell: number;
            notTried: number;
            noAnswer: number;
            messageLeft: number;
            reached: number;
            refused: number;
            unreachable: number;
            /** @description Clients who were erased before they were told: they can be told no more. */
            erased: number;
            /** @description Those who are still to be tried: neither reached, nor refused, nor unreachable, nor erased. */
            outstanding: number;
        };
        RecipientView: {
            /** @description Of the client, the person or the supplier; of a company that was only named: of the first attempt. */
            id: string;
            /** @enum {string} */
            audience: "artist" | "supplier" | "client" | "authority";
            clientId: string | null;
            clientReference: string | null;
            /** @description Null also for those who are not shown it, and after an erasure. */
            clientName: string | null;
            clientContact: string | null;
            /** @description The client was erased and can be told no more, unless they come by themselves. */
            erased: boolean;
            artistId: string | null;
            company: string | null;
            /**
             * @description Of a client: whether what touched them is certainly among what is recalled.
             * @enum {string|null}
             */
            certainty: "certain" | "possible" | null;
            /** @enum {string} */
            standing: "refused" | "reached" | "no answer" | "message left" | "unreachable" | "not tried";
            /** @description Told before, while a lot that touched them came to the recall only afterwards: to be told again. */
            toldEarlier: boolean;
            attempts: number;
            /** @description When the last attempt was made. */
            lastAt: string | null;
        };
        RecipientPageView: {
            totals: components["schemas"]["AudienceTotalsView"];
            items: components["schemas"]["RecipientView"][];
            /** @description Give it as `after` for the next page; null: this is the last. */
            next: string | null;
        };
        MessageParagraphView: {
            text: string;
            /** @description Codes of the elements it answers. */
            elements: string[];
        };
        LegalElementView: {
            /** @description Such as `art-36-2-c`. */
            code: string;
            /** @description What is asked, in few words. */
            asks: string;
            /** @description Such as `Regulation (EU) 2023/988, Art. 36(2)(c)`. */
            source: string;
            /**
             * @description P: read in the primary text, S: in a secondary source, M: from memory.
             * @enum {string}
             */
            howSure: "P" | "S" | "M";
        };
        MessageLotView: {
            lotId: string;
            label: string;
            code: string | null;
            /** @enum {string} */
            certainty: "certain" | "possible";
        };
        MessageRemarkView: {
            /** @enum {string} */
            code: "erased" | "drill" | "no contact point" | "no hazard named" | "no remedy named" | "softening words left out" | "advice left out" | "words in another language" | "no picture";
            /** @description In English. */
            text: string;
            /** @description What it is about, such as words of the notice that were left out. */
            words: string[];
        };
        PreparedMessageView: {
            /** @enum {string} */
            audience: "artist" | "supplier" | "client" | "authority";
            /** @enum {string} */
            language: "en" | "de";
            heading: string;
            /** @description Codes of the elements that the heading answers. */
            headingElements: string[];
            /** @description Whom it is for; null: it is not known, or may not be shown. */
            recipient: string | null;
            /** @description How a client can be reached, as they told the studio. */
            recipientContact: string | null;
            body: components["schemas"]["MessageParagraphView"][];
            elements: components["schemas"]["LegalElementView"][];
            lots: components["schemas"]["MessageLotView"][];
            /** @description Photos of these lots that were taken for this recall, the latest first; at most three. */
            photoIds: string[];
            remarks: components["schemas"]["MessageRemarkView"][];
            /** @description True: of a drill, not to be passed on. */
            drill: boolean;
        };
        RecordContactDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /** Format: uuid */
            clientId?: string;
            /** Format: uuid */
            artistId?: string;
            /** @description A supplier or an authority. */
            company?: string;
            /** @description What was said. Of a client it is kept sealed. */
            note?: string;
            /** @enum {string} */
            audience: "client" | "artist" | "supplier" | "authority";
            /** @enum {string} */
            channel: "telephone" | "e-mail" | "letter" | "message" | "in person";
            /** @enum {string} */
            outcome: "reached" | "refused" | "no answer" | "message left" | "unreachable";
        };
        RecordedContactView: {
            id: string;
            /** @enum {string} */
            audience: "artist" | "supplier" | "client" | "authority";
            /** @enum {string} */
            outcome: "refused" | "reached" | "no answer" | "message left" | "unreachable";
            occurredAt: string;
            recordedAt: string;
        };
        ContactView: {
            id: string;
            /** @enum {string} */
            audience: "artist" | "supplier" | "client" | "authority";
            clientId: string | null;
            clientReference: string | null;
            artistId: string | null;
            company: string | null;
            /** @enum {string} */
            channel: "telephone" | "e-mail" | "letter" | "message" | "in person";
            /** @enum {string} */
            outcome: "refused" | "reached" | "no answer" | "message left" | "unreachable";
            /** @description Of a client: null for those who are not shown it, and after an erasure. */
            note: string | null;
            occurredAt: string;
            recordedAt: string;
            personId: string | null;
        };
        ContactPageView: {
            items: components["schemas"]["ContactView"][];
            /** @description Give it as `after` for the next page; null: this is the last. */
            next: string | null;
        };
        AudienceEffectivenessView: {
            toTell: number;
            notTried: number;
            noAnswer: number;
            messageLeft: number;
            reached: number;
            refused: number;
            unreachable: number;
            /** @description Clients who were erased before they were told: they can be told no more. */
            erased: number;
            /** @description Those who are still to be tried: neither reached, nor refused, nor unreachable, nor erased. */
            outstanding: number;
            /** @enum {string} */
            audience: "artist" | "supplier" | "client" | "authority";
            /** @description Reached or refused: they know, or did not want to. */
            told: number;
            /** @description Of those to be told, 0 to 100 with one decimal; null: there is nobody to tell. */
            toldPercent: number | null;
        };
        EffectivenessLevelView: {
            /** @enum {string} */
            level: "A" | "E" | "D" | "C" | "B";
            /** @description Of those to be told; null: agreed case by case, and not told here. */
            percent: number | null;
            /** @description How many are to be checked, rounded up; null where there is no per cent. */
            toCheck: number | null;
            met: boolean | null;
            /**
             * @description How sure the numbers are: see `LegalElementView`.
             * @enum {string}
             */
            howSure: "P" | "S" | "M";
        };
        EffectivenessView: {
            audiences: components["schemas"]["AudienceEffectivenessView"][];
            /** @description Clients, artists and suppliers together; an authority is informed and not checked. */
            toTell: number;
            told: number;
            toldPercent: number | null;
            /** @description From A to E, judged on those together. */
            levels: components["schemas"]["EffectivenessLevelView"][];
            /**
             * @description The highest level that is met; null: none.
             * @enum {string|null}
             */
            met: "A" | "E" | "D" | "C" | "B" | null;
            /** @description Where the levels come from. */
            source: string;
            /** @description Such as "not verified against the official text"; null: verified. */
            caveat: string | null;
        };
        ObstacleCountView: {
            /** @enum {string} */
            what: "pieces" | "not found" | "microlitres" | "not looked for" | "not tried" | "tried in vain";
            count: number;
        };
        ObstacleView: {
            /** @enum {string} */
            obstacle: "undecided lots" | "clients not told" | "containers not found" | "stock without disposition" | "pieces unexplained";
            /** @description So many lots, clients, containers or pieces … */
            count: number;
            /** @description … of so many. */
            of: number;
            /** @description The same by kind. */
            counts: components["schemas"]["ObstacleCountView"][];
            /** @description The same as a sentence, in English. */
            words: string;
        };
        LotFiguresView: {
            affected: number;
            notAffected: number;
            undecided: number;
        };
        ClientFiguresView: {
            exposed: number;
            reached: number;
            refused: number;
            unreachable: number;
            /** @description Tried, but neither reached nor given up. */
            triedInVain: number;
            notTried: number;
            /** @description Erased before they were told: nobody knows any more who they were. */
            erased: number;
        };
        ContainerFiguresView: {
            toFind: number;
            found: number;
            notFound: number;
            notLookedFor: number;
        };
        RemainingFiguresView: {
            containers: number;
            pieces: number;
            microlitres: number;
        };
        BalanceFiguresView: {
            lots: number;
            /** @description Pieces that came in. */
            pieces: number;
            /** @description Of these, in containers that are not found. */
            missingPieces: number;
            /** @description Of these, not accounted for by any other reason, such as a count that found fewer. */
            unexplainedPieces: number;
        };
        ClosingFiguresView: {
            lots: components["schemas"]["LotFiguresView"];
            clients: components["schemas"]["ClientFiguresView"];
            containers: components["schemas"]["ContainerFiguresView"];
            remaining: components["schemas"]["RemainingFiguresView"];
            balance: components["schemas"]["BalanceFiguresView"];
        };
        ReadinessView: {
            recallId: string;
            /** @enum {string} */
            kind: "recall" | "drill";
            /** @enum {string} */
            state: "closed" | "withdrawn" | "open";
            /** @description True: nothing stands against closing. A drill can be closed at any time; what was not done shows in its score. */
            ready: boolean;
            obstacles: components["schemas"]["ObstacleView"][];
            figures: components["schemas"]["ClosingFiguresView"];
        };
        ClosingOverrideDto: {
            /** @description Why the recall is closed all the same. Nothing of a client. */
            reason: string;
            /** @enum {string} */
            obstacle: "undecided lots" | "clients not told" | "containers not found" | "stock without disposition" | "pieces unexplained";
        };
        CloseRecallDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date-time
             * @description When it happened by the device's clock, ISO 8601 with Z or an offset; left out: now.
             */
            occurredAt?: string;
            /**
             * Format: uuid
             * @description Who answers for it; they or the second are who makes the request.
             */
            signedBy: string;
            /**
             * Format: uuid
             * @description Another person who signs with them.
             */
            secondSignedBy?: string;
            /** @description For each obstacle that still stands, why it does not matter. */
            overrides: components["schemas"]["ClosingOverrideDto"][];
        };
        DrillScoreView: {
            /** @description Uses that lead to a client and a session by a lot that was read or typed, of all uses. */
            tracedPercent: number | null;
            /** @description Pieces that are accounted for, of all that came in. */
            balancedPercent: number | null;
            /** @description Containers that were found, of all that were to be found. */
            foundPercent: number | null;
            /** @description From the opening to the closing; of an open one until now. */
            minutes: number;
        };
        ClosingView: {
            id: string;
            recallId: string;
            /** @enum {string} */
            outcome: "closed" | "withdrawn";
            closedAt: string;
            signedBy: string;
            secondSignedBy: string | null;
            /** @description What stood against closing, and was overridden with a reason. */
            overridden: ("undecided lots" | "clients not told" | "containers not found" | "stock without disposition" | "pieces unexplained")[];
            /** @description Holds of this recall that stay: what was not disposed of may still not be used. */
            holdsStaying: number;
            /** @description Standing holds that stay: what arrives later of these lots is still caught. */
            standingHoldsStaying: number;
            /** @description Of a drill. */
            score: components["schemas"]["DrillScoreView"] | null;
        };
        ReportStudioView: {
            id: string;
            name: string;
            timeZone: string;
        };
        ReportRecallView: {
            id: string;
            title: string;
            /** @enum {string} */
            kind: "recall" | "drill";
            /** @enum {string} */
            state: "closed" | "withdrawn" | "open";
            chainWide: boolean;
            openedAt: string;
            openedBy: string | null;
            endedAt: string | null;
        };
        ReportScopeView: {
            number: number;
            recordedAt: string;
            personId: string | null;
            /** @description Why it was amended; null for the first. */
            reason: string | null;
            issuer: string | null;
            reference: string | null;
            issuedOn: string | null;
            classification: string | null;
            risk: string | null;
            remedy: string | null;
            /** @enum {string|null} */
            noticeSource: "pasted" | "entered" | "csv" | "enforcement json" | "safety gate xml" | "fetched" | null;
            /** @description SHA-256 of the notice's text as it was kept. */
            noticeDigest: string | null;
            /** @description Each product with its lots, as a sentence in English. */
            words: string[];
        };
        ReportEventView: {
            /** @description By the service's clock. */
            at: string;
            event: string;
            /** @description In English. */
            words: string;
            /** @description Null: several, or the service itself. */
            personId: string | null;
        };
        ReportDecisionView: {
            /** @enum {string} */
            decision: "affected" | "not affected";
            reason: string;
            at: string;
            personId: string | null;
        };
        ReportLotView: {
            lotId: string;
            makerName: string;
            productName: string;
            shade: string | null;
            code: string | null;
            useBy: string | null;
            /** @enum {string} */
            grade: "certain" | "possible";
            /** @description Why, in English. */
            reasons: string[];
            /** @enum {string} */
            standing: "affected" | "not affected" | "undecided";
            /** @description The latest decision on what was only possible. */
            decision: components["schemas"]["ReportDecisionView"] | null;
        };
        ReportExposureView: {
            clientId: string;
            clientReference: string;
            sessionId: string;
            /** @description The studio's local day. */
            day: string;
            visitKind: string;
            bodyPlace: string;
            lotId: string;
            lotCode: string | null;
            productName: string;
            shade: string | null;
            /** @enum {string} */
            certainty: "certain" | "possible";
            /**
             * @description As itself, within a house blend, or open on that day while the use was recorded as another lot.
             * @enum {string}
             */
            as: "house blend" | "another open lot that day" | "itself";
        };
        ReportExposuresView: {
            clients: number;
            certainClients: number;
            sessions: number;
            certainSessions: number;
            /** @description Recorded by mistake and taken back; they expose nobody. */
            reversedUses: number;
            items: components["schemas"]["ReportExposureView"][];
            /** @description How many are not listed here; the spreadsheet of exposures has them all. */
            leftOut: number;
        };
        ReportContactCountView: {
            /** @enum {string} */
            audience: "artist" | "supplier" | "client" | "authority";
            outcome: string;
            attempts: number;
        };
        ReportToldClientView: {
            clientId: string;
            clientReference: string;
            /** @enum {string|null} */
            certainty: "certain" | "possible" | null;
            erased: boolean;
            attempts: number;
            /** @enum {string} */
            standing: "refused" | "reached" | "no answer" | "message left" | "unreachable" | "not tried";
            lastAt: string | null;
        };
        ReportContactsView: {
            counts: components["schemas"]["ReportContactCountView"][];
            clients: components["schemas"]["ReportToldClientView"][];
            leftOut: number;
        };
        ReportUnexplainedView: {
            reason: string;
            pieces: number;
            /** @description An estimate. */
            microlitres: number;
        };
        ReportBalanceView: {
            lotId: string;
            code: string | null;
            productName: string;
            shade: string | null;
            /** @description True: a house blend in which a lot of the recall is. */
            isBlend: boolean;
            /** @enum {string} */
            standing: "affected" | "undecided";
            cameInPieces: number;
            usedPieces: number;
            emptiedPieces: number;
            blendedPieces: number;
            wastedPieces: number;
            returnedPieces: number;
            transferredOutPieces: number;
            /** @description On hand, and found by somebody who looked for it. */
            foundPieces: number;
            notAccountedPieces: number;
            onHandPieces: number;
            cameInMicrolitres: number;
            usedMicrolitres: number;
            onHandMicrolitres: number;
            unexplained: components["schemas"]["ReportUnexplainedView"][];
            /** @description Of the pieces, whole per cent, rounded down; null: none came in. */
            balancedPercent: number | null;
        };
        ReportContainerView: {
            containerId: string;
            labelCode: string;
            lotId: string;
            lotCode: string | null;
            productName: string;
            form: string;
            /**
             * @description By the latest look for it.
             * @enum {string}
             */
            standing: "found" | "not found" | "not looked for" | "disposed" | "gone";
            /** @description Left by the book. */
            pieces: number;
            foundAt: string | null;
            personId: string | null;
            tag: string | null;
        };
        ReportDispositionView: {
            containerId: string;
            labelCode: string;
            lotId: string;
            /** @enum {string} */
            kind: "returned" | "destroyed";
            pieces: number;
            microlitres: number;
            reference: string;
            witnessId: string | null;
            photoId: string | null;
            at: string;
            personId: string | null;
        };
        ReportOverrideView: {
            /** @enum {string} */
            obstacle: "undecided lots" | "clients not told" | "containers not found" | "stock without disposition" | "pieces unexplained";
            reason: string;
        };
        ReportClosingView: {
            /** @enum {string} */
            outcome: "closed" | "withdrawn";
            reason: string | null;
            at: string;
            overrides: components["schemas"]["ReportOverrideView"][];
            /** @description Null: a part that followed the withdrawal of another studio. */
            signedBy: string | null;
            secondSignedBy: string | null;
        };
        RecallStepView: {
            /** @enum {string} */
            step: "closed" | "notice read" | "scope settled" | "stock listed" | "stock found" | "exposures listed" | "messages prepared" | "balance drawn";
            /** @description By the service's clock; null: not done yet. */
            doneAt: string | null;
            /** @description From what was done before it, cut to a tenth. */
            minutes: number | null;
            personId: string | null;
        };
        ReportPersonView: {
            id: string;
            name: string | null;
        };
        RecallReportView: {
            /** @description When it was drawn up; of a closed recall at its closing, and it stays so. */
            drawnAt: string;
            studio: components["schemas"]["ReportStudioView"];
            recall: components["schemas"]["ReportRecallView"];
            scopes: components["schemas"]["ReportScopeView"][];
            timeline: components["schemas"]["ReportEventView"][];
            lots: components["schemas"]["ReportLotView"][];
            exposures: components["schemas"]["ReportExposuresView"];
            contacts: components["schemas"]["ReportContactsView"];
            balance: components["schemas"]["ReportBalanceView"][];
            containers: components["schemas"]["ReportContainerView"][];
            dispositions: components["schemas"]["ReportDispositionView"][];
            figures: components["schemas"]["ClosingFiguresView"];
            /** @description What stood against closing when this was drawn up. */
            obstacles: components["schemas"]["ObstacleView"][];
            /** @description Null: not closed. */
            closing: components["schemas"]["ReportClosingView"] | null;
            steps: components["schemas"]["RecallStepView"][];
            /** @description Of a drill. */
            score: components["schemas"]["DrillScoreView"] | null;
            /** @description Who is named by id above. */
            people: components["schemas"]["ReportPersonView"][];
        };
        DrillView: {
            recallId: string;
            title: string;
            /** @enum {string} */
            state: "closed" | "withdrawn" | "open";
            chainWide: boolean;
            openedAt: string;
            endedAt: string | null;
            /** @description True: its lot was drawn, else chosen. */
            drawn: boolean;
            /** @description Null: it is open, or was withdrawn. */
            score: components["schemas"]["DrillScoreView"] | null;
        };
        DrillPageView: {
            items: components["schemas"]["DrillView"][];
            /** @description Give it as `after` for the next page; null: this is the last. */
            next: string | null;
        };
        OpenDrillDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: uuid
             * @description The lot to rehearse with; else `random`.
             */
            lotId?: string;
            /** @description Draws one of the lots that were used lately. */
            random?: boolean;
            /** @description How far back "lately" reaches; left out: 3. */
            years?: number;
            /** @description Every studio of the chain rehearses its part. */
            wholeChain?: boolean;
        };
        OpenedDrillView: {
            recallId: string;
            /** @description The lot that is rehearsed with. */
            lotId: string;
            /** @description True: it was drawn; the id of the request is the seed. */
            drawn: boolean;
            /** @description How many lots it was drawn from; null: it was chosen. */
            drawnFrom: number | null;
        };
        RecallStepsView: {
            recallId: string;
            startedAt: string;
            endedAt: string | null;
            steps: components["schemas"]["RecallStepView"][];
            /** @description How it stands, or stood at the closing. Null: this is no drill, or one that was withdrawn. */
            score: components["schemas"]["DrillScoreView"] | null;
        };
        NoteStepDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @enum {string} */
            step: "notice read" | "scope settled" | "stock listed" | "stock found" | "exposures listed" | "messages prepared" | "balance drawn";
        };
        DrillScheduleView: {
            /** @description Null: as it likes. */
            everyMonths: number | null;
            /** @description The day by which the next drill is to be closed; null: none is asked for. */
            nextOn: string | null;
            /** @description The day from which it is overdue is here: a notice, after a month a warning. */
            due: boolean;
            /** @description Null: nothing was set yet. */
            version: number | null;
        };
        SetDrillScheduleDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date
             * @description The day by which the next drill is to be closed; null: none is asked for.
             */
            nextOn: string | null;
            /** @description The version this change was made from; left out when nothing is set yet. */
            version?: number;
            /** @description Null: as the studio likes. */
            everyMonths: number | null;
        };
        SetChainDrillScheduleDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /**
             * Format: date
             * @description The day by which the next drill is to be closed; null: none is asked for.
             */
            nextOn: string | null;
            /** @description Null: as each studio likes. */
            everyMonths: number | null;
        };
        ChainDrillScheduleView: {
            studioIds: string[];
            everyMonths: number | null;
            nextOn: string | null;
        };
        StudioProgressView: {
            studioId: string;
            studioName: string;
            /**
             * @description Null: this studio has no part in it yet.
             * @enum {string|null}
             */
            state: "closed" | "withdrawn" | "open" | null;
            lotsAffected: number;
            lotsUndecided: number;
            containersToFind: number;
            containersFound: number;
            clientsExposed: number;
            /** @description Reached, refused to be told, or not to be reached by any means. */
            clientsSettled: number;
            /** @description Pieces accounted for, cut to a tenth of a per cent; null: no pieces came in. */
            balancedPercent: number | null;
            obstacles: components["schemas"]["ObstacleView"][];
        };
        ChainProgressView: {
            recallId: string;
            title: string;
            /** @enum {string} */
            kind: "recall" | "drill";
            studios: components["schemas"]["StudioProgressView"][];
        };
        RecordQualityView: {
            studioId: string;
            studioName: string;
            /** @description First and last local day of the sessions. */
            from: string;
            through: string;
            uses: number;
            /** @description Recorded afterwards, from memory or from paper. */
            late: number;
            latePercent: number | null;
            /** @description The lot was picked from a list, neither read nor typed. */
            picked: number;
            pickedPercent: number | null;
            /** @description Reversed, since it was recorded by mistake. */
            corrected: number;
            correctedPercent: number | null;
            /** @description Used although it had been refused. */
            againstRefusal: number;
            againstRefusalPercent: number | null;
        };
        ChainRecordQualityView: {
            studios: components["schemas"]["RecordQualityView"][];
        };
        FailedBackupView: {
            at: string;
            /** @description In a few words, such as `no space is left on the disk`. */
            cause: string;
        };
        BackupStatusView: {
            /** @description The instant of which the last good backup shows the record; null: there is none. */
            lastGoodAt: string | null;
            /** @description How many good ones there are. */
            kept: number;
            /** @description How many of them are kept before the oldest is removed. */
            keptAtMost: number;
            /** @description When the next one is made; null: none is scheduled. */
            nextDueAt: string | null;
            /** @description The last one that failed since the service was started. */
            lastFailure: components["schemas"]["FailedBackupView"] | null;
        };
        LiveView: {
            /**
             * @description The process answers.
             * @enum {string}
             */
            status: "live";
        };
        ReadyView: {
            /**
             * @description The service can work: its database answers and has the schema this version works with.
             * @enum {string}
             */
            status: "ready";
            /** @description Parts that fail while the service serves people all the same: `queue`, which carries what is told of alerts. */
            failing: "queue"[];
        };
        AuditedRowView: {
            table: string;
            id: string;
            /** @description SHA-256 of the row as the write left it; null: it was removed. */
            digest: string | null;
            /** @description SHA-256 of the row as the write found it; missing when it was made. */
            before?: string;
        };
        AuditEntryView: {
            /** @description Gapless from 1 in each studio. */
            sequence: number;
            recordedAt: string;
            /** @description Null: the service by itself. */
            personId: string | null;
            /** @description By what way it came in: `api`, `paper`, `system`, `cli`. */
            via: string;
            /** @description Room and verb, such as `stock.open`. */
            action: string;
            subjectKind: string;
            subjectId: string;
            /** @description What the write told beside its rows; ids and names of fields, never personal data. */
            notes: {
                [key: string]: unknown;
            };
            rows: components["schemas"]["AuditedRowView"][];
            previousHash: string;
            /** @description SHA-256 of the entry with the hash of the one before. */
            hash: string;
        };
        AuditPageView: {
            items: components["schemas"]["AuditEntryView"][];
            /**
             * @description Hand it in as `after` for the next page; null: this was the last. Where few entries fit the filters, a page can hold
             *     fewer than asked for, or none, and still have a next one: each looks through so many entries only.
             */
            next: number | null;
        };
        ChainHeadView: {
            sequence: number;
            /** @description SHA-256 of the entry. */
            hash: string;
        };
        FurthestHeadView: {
            /** @description Such as `the backup 20261125T081500Z-scheduled`. */
            from: string;
            sequence: number;
        };
        FindingView: {
            /**
             * @description What was looked at.
             * @enum {string}
             */
            check: "chain" | "balance" | "row" | "head" | "database" | "level";
            table: string | null;
            /** @description Of the row in that table. */
            id: string | null;
            message: string;
        };
        VerificationView: {
            /** @description Entries of the audit log. */
            entries: number;
            head: components["schemas"]["ChainHeadView"] | null;
            /** @description Rows of the studio that were held against the audit log. */
            rows: number;
            /** @description The same of the product register, which belongs to the chain. */
            registerRows: number;
            balances: number;
            /** @description Products whose quantity on hand was added up anew. */
            levels: number;
            /** @description Heads in the service's backups that were compared with the log, and the one that reaches furthest. */
            heads: number;
            furthestHead: components["schemas"]["FurthestHeadView"] | null;
            /** @description How many things are wrong; none: everything fits together. */
            wrong: number;
            /** @description The first 100 of them. */
            findings: components["schemas"]["FindingView"][];
        };
        ClientRetentionView: {
            clientId: string;
            clientReference: string;
            /** @description Local day of the last record of a visit; null: never treated. */
            lastRecordOn: string | null;
            /** @description Last local day of the floor, from the last record or, without one, from when they were added; null: not known. */
            keptThrough: string | null;
            /** @description Whether they may be erased now on the studio's own motion. Nothing says that they must. */
            erasable: boolean;
            /** @description What stands against it. */
            obstacles: components["schemas"]["ErasureObstacleView"][];
            /** @description Sessions that are planned or under way, which stand against it too. */
            openSessionIds: string[];
        };
        ClientRetentionPageView: {
            items: components["schemas"]["ClientRetentionView"][];
            /** @description Give it as `after` for the next page; null: this is the last. */
            next: string | null;
        };
        CarryOutRetentionDto: {
            /**
             * Format: uuid
             * @description Made by the client, a UUID (version 7 preferred). Sent again with the same content it gets the first answer.
             */
            id: string;
            /** @description Who is to be erased, one by one: nobody is because time has passed. */
            clientIds: string[];
        };
        CarriedOutRetentionView: {
            answers: components["schemas"]["ErasureAnswerView"][];
        };
        /** @description Problem details by RFC 9457. Further members depend on the code. */
        Problem: {
            /** Format: uri */
            type: string;
            title: string;
            status: number;
            /** @description What was seen, what is allowed and what to do. */
            detail: string;
            /** @description Stable; a program may rely on it. */
            code: string;
            faults?: {
                field: string;
                message: string;
            }[];
        };
    };
    responses: never;
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    Studios_list: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StudioView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Studios_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StudioView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Studios_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeStudioDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StudioView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Studios_retentionPresets: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RetentionPresetView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Studios_add: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddStudioDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AddedStudioView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    People_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PersonView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    People_add: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddPersonDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PersonView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    People_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                personId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangePersonDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PersonView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    SignIn_setUpState: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SetUpStateView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    SignIn_setUp: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetUpDto"];
            };
        };
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    SignIn_signIn: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SignInDto"];
            };
        };
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    SignIn_signOut: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    SignIn_lookAtInvitation: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["LookAtInvitationDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["InvitationView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    SignIn_acceptInvitation: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AcceptInvitationDto"];
            };
        };
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    OwnAccount_show: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RequesterView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    OwnAccount_signIns: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OwnSignInView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    OwnAccount_end: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["EndSignInsDto"];
            };
        };
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    OwnAccount_changePassword: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangePasswordDto"];
            };
        };
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    OwnAccount_removePassword: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Access_invite: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                personId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MadeLinkView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Access_signOut: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                personId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SignedOutView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Access_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ApiTokenView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Access_make: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MakeApiTokenDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MadeApiTokenView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Access_revoke: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                tokenId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RevokedApiTokenView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Passkeys_signInOptions: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description PublicKeyCredentialRequestOptionsJSON of WebAuthn Level 3, for the browser */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        [key: string]: unknown;
                    };
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Passkeys_signIn: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PasskeySignInDto"];
            };
        };
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Passkeys_list: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PasskeyView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Passkeys_add: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddPasskeyDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AddedPasskeyView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Passkeys_options: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description PublicKeyCredentialCreationOptionsJSON of WebAuthn Level 3, for the browser */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": {
                        [key: string]: unknown;
                    };
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Passkeys_rename: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                passkeyId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RenamePasskeyDto"];
            };
        };
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Passkeys_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                passkeyId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Tablets_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TabletView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Tablets_enrol: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["EnrolTabletDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TabletView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Tablets_rename: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                tabletId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RenameTabletDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TabletView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Tablets_revoke: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                tabletId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TabletView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Tablets_listBadges: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BadgeView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Tablets_printBadge: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                personId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": string;
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Tablets_withdrawBadge: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                personId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WithdrawnBadgeView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    TabletSwitch_show: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["EnrolledTabletView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    TabletSwitch_switch: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SwitchDto"];
            };
        };
        responses: {
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    OwnPin_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OwnPinView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    OwnPin_choose: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChoosePinDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OwnPinView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    OwnPin_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OwnPinView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    AlertDestinations_seen: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description Left out: all that you may see. */
                whose?: "own" | "all";
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertDestinationPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    AlertDestinations_pushKey: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PushKeyView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    AlertDestinations_deliveries: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                destinationId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertDeliveryView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    AlertDestinations_addMail: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddMailDestinationDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertDestinationView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    AlertDestinations_addWebhook: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddWebhookDestinationDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MadeWebhookView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    AlertDestinations_addPush: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddPushDestinationDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertDestinationView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    AlertDestinations_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                destinationId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeAlertDestinationDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertDestinationView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    AlertDestinations_rotateSecret: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                destinationId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RotatedSecretView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    AlertDestinations_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                destinationId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertDestinationView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    AlertDestinations_test: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                destinationId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TestedDestinationView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    AlertPreferences_all: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ToldPersonView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    AlertPreferences_own: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertPreferenceView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    AlertPreferences_set: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetAlertPreferenceDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertPreferenceView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Alerts_page: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description Such as `low stock`. */
                kind?: string;
                /** @description Which alerts; left out: the open ones. */
                state?: "open" | "closed" | "all";
                /** @description Only those that are put off until later, or only the others; left out: both. */
                putOff?: "yes" | "no";
                /** @description Only those given to whoever asks. */
                givenTo?: "me";
                severity?: "notice" | "warning" | "urgent";
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Alerts_sweepNow: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SweepView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Alerts_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                alertId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertHistoryView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Alerts_acknowledge: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                alertId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Alerts_putOff: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                alertId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PutOffDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Alerts_give: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                alertId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["GiveDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Alerts_note: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                alertId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NoteDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Alerts_close: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                alertId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CloseDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Alerts_deliveries: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                alertId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertDeliveryView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Deliveries_page: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description Those that wait, or those that could not be sent; left out: the latter. What was sent stands with its alert. */
                state?: "pending" | "undeliverable";
                /**
                 * @description Only what somebody can still do something about: of alerts that stand and of summaries of today, to who works here,
                 *     where it may still go; no tests.
                 */
                actionable?: boolean;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PromisedDeliveryPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Deliveries_sendAgain: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                deliveryId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AlertDeliveryView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    HandingOn_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HandingOnView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    HandingOn_set: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetHandingOnDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HandingOnView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    CalendarAddress_own: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OwnCalendarAddressView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    CalendarAddress_make: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MadeCalendarAddressView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    CalendarAddress_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RemovedCalendarAddressView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Calendars_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                file: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/calendar": string;
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Live_listen: {
        parameters: {
            query?: never;
            header?: {
                "Last-Event-ID"?: string;
            };
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/event-stream": string;
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    MorningSummaries_now: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SummaryNowView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    MorningSummaries_page: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MorningSummaryPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Makers_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CompanyView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Makers_add: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddCompanyDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CompanyView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Makers_rename: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                makerId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RenameCompanyDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CompanyView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Suppliers_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CompanyView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Suppliers_add: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddCompanyDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CompanyView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Suppliers_rename: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                supplierId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RenameCompanyDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CompanyView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Products_list: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description Words that stand in the name, the shade or the maker's name. */
                text?: string;
                kind?: "pigment" | "cartridge" | "consumable";
                /** @description Archived products are hidden unless asked for. */
                archived?: "hidden" | "shown";
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProductPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Products_add: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddProductDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProductView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Products_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                productId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProductView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Products_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                productId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeProductDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProductView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Products_archive: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                productId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ArchiveProductDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProductView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Products_restore: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                productId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ArchiveProductDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProductView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Products_addGtin: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                productId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddGtinDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProductView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Products_correctGtin: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                productId: string;
                gtin: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CorrectGtinDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProductView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Configurations_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ConfigurationView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Configurations_declare: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DeclareEquivalenceDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["EquivalenceView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Configurations_withdraw: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                equivalenceId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WithdrawEquivalenceDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["EquivalenceView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Symbols_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ReadSymbolDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SymbolView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Blends_page: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BlendPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Blends_make: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MakeBlendDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BlendView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Blends_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                blendId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BlendView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ContainerList_page: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                placeId?: string;
                lotId?: string;
                productId?: string;
                /** @description Left out: all that is still here, neither finished nor discarded. */
                state?: "sealed" | "opened" | "finished" | "discarded" | "practice only";
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ContainerList_pick: {
        parameters: {
            query: {
                productId: string;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerPickView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ContainerList_byLabel: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                code: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShownContainerView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ContainerList_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                containerId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShownContainerView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ContainerOperations_open: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                containerId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["OpenContainerDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerChangeView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ContainerOperations_correctOpenedDate: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                containerId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CorrectOpenedDateDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerChangeView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ContainerOperations_undoOpening: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                containerId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["UndoOpeningDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerChangeView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ContainerOperations_finish: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                containerId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["FinishContainerDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerChangeView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ContainerOperations_discard: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                containerId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DiscardContainerDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerChangeView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ContainerOperations_waste: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                containerId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WastePiecesDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerChangeView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ContainerOperations_giveBack: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                containerId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ReturnContainerDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerChangeView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ContainerOperations_keepForPractice: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                containerId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["KeepForPracticeDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerChangeView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ContainerOperations_count: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                containerId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CountContainerDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerChangeView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ContainerOperations_move: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                containerId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MoveContainerDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerChangeView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    DateThresholds_list: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DateThresholdPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    DateThresholds_set: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                productId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetDateThresholdDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DateThresholdView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    DateThresholds_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                productId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RemoveDateThresholdDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DateThresholdView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ExpectedDeliveries_list: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
                /** @description Which; left out: those that are still expected. */
                state?: "expected" | "ended" | "all";
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ExpectedDeliveryPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ExpectedDeliveries_expect: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ExpectDeliveryDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ExpectedDeliveryView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ExpectedDeliveries_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                expectedDeliveryId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ExpectedDeliveryView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ExpectedDeliveries_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                expectedDeliveryId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeExpectedDeliveryDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ExpectedDeliveryView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ExpectedDeliveries_callOff: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                expectedDeliveryId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CallOffDeliveryDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ExpectedDeliveryView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ExpectedDeliveries_received: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                expectedDeliveryId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ExpectedDeliveryReceivedDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ExpectedDeliveryView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Holds_page: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OpenHoldPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Holds_place: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PlaceHoldDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HoldView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Holds_askRelease: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                holdId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AskReleaseDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HoldView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Holds_release: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                holdId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ReleaseHoldDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["HoldView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Labels_print: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PrintLabelsDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": string;
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Levels_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StockLevelsView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Levels_set: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetLevelDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LevelView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Levels_remove: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                levelId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RemoveLevelDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LevelView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    LotList_show: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description The `nextContainer` of the answer before. */
                containersAfter?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
                lotId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LotView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    LotCorrections_correct: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                lotId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CorrectLotDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CorrectedLotView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    LotList_page: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                productId?: string;
                /** @description Any code printed for the lot, corrected ones included, whole; capitals do not matter. */
                code?: string;
                /** @description Lots of which anything is usable, has to be used soon, is held or expired, or of which nothing is left. */
                state?: "usable" | "ending soon" | "held" | "expired" | "empty";
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LotPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Movements_reverse: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                movementId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ReverseMovementDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContainerChangeView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    OpeningStock_preview: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["JudgeFileDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OpeningStockPreviewView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    OpeningStock_takeIn: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TakeInFileDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TakenInStockView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Photos_keep: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["KeepPhotoDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PhotoView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Photos_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                photoId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/jpeg": string;
                    "image/png": string;
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Places_list: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlaceView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Places_add: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddPlaceDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlaceView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Places_archive: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                placeId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ArchivePlaceDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlaceView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Receiving_list: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DeliveryPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Receiving_receive: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ReceiveDeliveryDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReceiptView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Receiving_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                deliveryId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DeliveryView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Transfers_page: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
                /** @description Out: sent from here; in: sent to here; left out: both. */
                direction?: "out" | "in";
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TransferPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Transfers_send: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SendTransferDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TransferView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Transfers_receivers: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReceivingStudioView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Transfers_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                transferId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TransferView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Transfers_arrive: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                transferId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RecordArrivalDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ArrivalView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Transfers_withdraw: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                transferId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WithdrawTransferDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TransferView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Clients_list: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClientPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Clients_add: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddClientDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WrittenClientView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Clients_search: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SearchClientsDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClientView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Clients_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                clientId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClientView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Clients_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                clientId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeClientDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WrittenClientView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ClientRights_accesses: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
                clientId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClientAccessPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ClientRights_answers: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
                clientId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ErasureAnswerPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ClientRights_erase: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                clientId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AskErasureDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ErasureAnswerView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ClientRights_preview: {
        parameters: {
            query?: {
                /** @description For what reason it would be asked; left out: consent withdrawn. */
                ground?: "no longer necessary" | "consent withdrawn" | "objection" | "unlawful processing" | "erasure required by law" | "retention over";
            };
            header?: never;
            path: {
                studioId: string;
                clientId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ErasurePreviewView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ClientRights_legalClaims: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                clientId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LegalClaimView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ClientRights_noteClaim: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                clientId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NoteLegalClaimDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WrittenLegalClaimView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ClientRights_endClaim: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                clientId: string;
                claimId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["EndLegalClaimDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WrittenLegalClaimView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Procedures_list: {
        parameters: {
            query?: {
                /** @description Procedures no longer offered are hidden unless asked for. */
                archived?: "hidden" | "shown";
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProcedureView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Procedures_add: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddProcedureDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProcedureView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Procedures_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                procedureId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeProcedureDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ProcedureView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    KitLists_show: {
        parameters: {
            query?: {
                /** @description The artist for whom it is asked. */
                artistId?: string;
            };
            header?: never;
            path: {
                studioId: string;
                procedureId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KitListView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    KitLists_put: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                procedureId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PutKitListDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["KitListView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Sessions_list: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                artistId?: string;
                clientId?: string;
                /** @description First local day of the studio, YYYY-MM-DD. */
                from?: string;
                /** @description Last local day, which is included. */
                to?: string;
                state?: "planned" | "in setup" | "completed" | "cancelled" | "not attended";
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SessionPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Sessions_plan: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PlanSessionDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WrittenSessionView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Sessions_walkIn: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WalkInDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WrittenSessionView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Sessions_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SessionView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Sessions_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeSessionDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WrittenSessionView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Sessions_record: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClientRecordView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Sessions_startSetup: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SessionStepDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WrittenSessionView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Sessions_cancel: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SessionStepDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WrittenSessionView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Sessions_notAttended: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SessionStepDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WrittenSessionView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Tray_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TrayView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Tray_scan: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ScanDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ScanView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Tray_takeOff: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
                lineId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TakeOffDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TakenOffView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Tray_listMixes: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MixView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Tray_startMix: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["StartMixDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MixView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Tray_addToMix: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
                mixId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddToMixDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AddedToMixView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Tray_complete: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CompleteSessionDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CompletionView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    DayFacts_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DayFactsView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Trace_ofLot: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
                lotId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LotTraceView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Trace_csvOfLot: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                lotId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Trace_ofLots: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TraceLotsDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TraceView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Trace_ofClient: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
                clientId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TraceView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Trace_ofSession: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TraceView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    TouchUp_ofSession: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TouchUpView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    TouchUp_ofClient: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                clientId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TouchUpView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    TouchUp_recordHealedResult: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RecordHealedResultDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WrittenSessionView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    LateRecords_record: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RecordLateSessionDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecordedUsesView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    LateRecords_addUses: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddUsesDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecordedUsesView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    LateRecords_addComplications: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddComplicationsDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WrittenSessionView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    LateRecords_reverse: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                sessionId: string;
                useId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ReverseUseDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReversedUseView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ClientExport_export: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                clientId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClientExportView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ClientExport_exportPage: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                clientId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/html": string;
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Bookings_preview: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["JudgeBookingsDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BookingsPreviewView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Bookings_takeIn: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TakeInBookingsDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TakenInBookingsView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    SupplierTerms_list: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SupplierTermsPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    SupplierTerms_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                supplierId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SupplierTermsView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    SupplierTerms_set: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                supplierId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetSupplierTermsDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SupplierTermsView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Offers_list: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                supplierId?: string;
                productId?: string;
                /** @description Which; left out: those that stand. */
                state?: "offered" | "ended" | "all";
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OfferPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Offers_add: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddOfferDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OfferView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Offers_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                offerId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OfferView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Offers_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                offerId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeOfferDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OfferView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Offers_end: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                offerId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["EndOfferDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OfferView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    TrainingCourses_list: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description The first day shown; left out: today in the studio. */
                from?: string;
                /** @description Left out: without those that were cancelled. */
                state?: "booked" | "all";
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TrainingCoursePageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    TrainingCourses_add: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddTrainingCourseDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TrainingCourseView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    TrainingCourses_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                courseId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeTrainingCourseDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TrainingCourseView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    TrainingCourses_cancel: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                courseId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CancelTrainingCourseDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TrainingCourseView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PlanningSettings_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanningSettingsView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PlanningSettings_set: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetPlanningSettingsDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanningSettingsView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PlanningSettings_listItems: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ItemPlanningPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PlanningSettings_setItem: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetItemPlanningDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ItemPlanningView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PlanningSettings_removeItem: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RemoveItemPlanningDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ItemPlanningView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PlanningSettings_listArtists: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ArtistPlanningView"][];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PlanningSettings_setArtist: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                personId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetArtistPlanningDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ArtistPlanningView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PurchaseOrders_list: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description Of this supplier only. */
                supplierId?: string;
                /** @description Which; open, as when left out: neither closed nor called off; ended: one of the two. */
                state?: "open" | "ended" | "all" | "draft" | "approved" | "sent" | "received in part" | "closed" | "called off";
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PurchaseOrderPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PurchaseOrders_draft: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DraftOrderDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PurchaseOrderView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PurchaseOrders_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                orderId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PurchaseOrderView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PurchaseOrders_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                orderId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeOrderDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PurchaseOrderView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PurchaseOrders_draftFromPlan: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DraftFromPlanDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DraftedOrdersView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PurchaseOrders_approve: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                orderId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ApproveOrderDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PurchaseOrderView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PurchaseOrders_draftAgain: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                orderId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["OrderStepDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PurchaseOrderView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PurchaseOrders_send: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                orderId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SendOrderDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PurchaseOrderView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PurchaseOrders_callOff: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                orderId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["OrderStepDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PurchaseOrderView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PurchaseOrders_close: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                orderId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["OrderStepDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PurchaseOrderView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PurchaseOrders_pdf: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                orderId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": string;
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    PurchaseOrders_csv: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                orderId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Claims_page: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description Of this supplier only. */
                supplierId?: string;
                /** @description Which; left out: those that are open or sent. */
                state?: "standing" | "all" | "open" | "sent" | "settled" | "dropped";
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClaimPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Claims_open: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["OpenClaimDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClaimView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Claims_suggest: {
        parameters: {
            query?: {
                /** @description Of this delivery only; left out: of the deliveries and orders of the last 90 days. */
                deliveryId?: string;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClaimSuggestionsView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Claims_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                claimId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShownClaimView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Claims_change: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                claimId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeClaimDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClaimView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Claims_sent: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                claimId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ClaimStepDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClaimView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Claims_settled: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                claimId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SettleClaimDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClaimView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Claims_dropped: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                claimId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ClaimStepDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClaimView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Claims_text: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                claimId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/plain": string;
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Replays_latest: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReplaysView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Replays_make: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MakeReplayDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReplayView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Plans_list: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
                purpose?: "plan" | "what if";
                state?: "waiting" | "running" | "done" | "cancelled" | "failed";
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Plans_make: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MakePlanDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Plans_latest: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanDetailView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Plans_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                planId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanDetailView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Plans_listLines: {
        parameters: {
            query?: {
                supplierId?: string;
                /** @description How many at most, 1 to 200; left out: 50. */
                limit?: number;
                /** @description The `next` of the page before. */
                afterLine?: number;
                decision?: "order now" | "order later" | "order for the appointment" | "let run out" | "enough" | "cannot be ordered";
            };
            header?: never;
            path: {
                studioId: string;
                planId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanLinePageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Plans_line: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                planId: string;
                lineNumber: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanLineView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Plans_cancel: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                planId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CancelPlanDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlanView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Plans_takeLevels: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                planId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TakeLevelsDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LevelsTakenView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    RecallContainers_page: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
                /** @description Only those that stand so; left out: all. */
                standing?: "not looked for" | "found" | "not found" | "disposed" | "gone";
            };
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecallContainerPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    RecallContainers_find: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
                containerId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RecordFindingDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecordedFindingView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    RecallContainers_dispose: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
                containerId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RecordDispositionDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecordedDispositionView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    RecallBalance_page: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecallBalanceView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    RecallBalance_movements: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
                /** @description Only the movements behind one figure; left out: all of the lot. */
                kind?: "received" | "produced" | "transferred in" | "counted more" | "used" | "emptied" | "blended" | "wasted" | "returned" | "transferred out" | "counted fewer" | "moved between boxes";
            };
            header?: never;
            path: {
                studioId: string;
                recallId: string;
                lotId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BalanceMovementPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    NoticeFiles_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ReadNoticeFileDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NoticeFileView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Recalls_read: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ReadNoticeDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["NoticeReadingView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Recalls_match: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MatchScopeDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MatchedLotsView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Recalls_waitingNotices: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WaitingNoticePageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Recalls_notice: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                noticeId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecallNoticeView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Recalls_dismissNotice: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                noticeId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DismissNoticeDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DismissedNoticeView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Recalls_page: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
                /** @description Left out: all. */
                state?: "open" | "closed" | "withdrawn";
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecallPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Recalls_open: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["OpenRecallDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OpenedRecallView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Recalls_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecallView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Recalls_lots: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecallLotPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Recalls_amend: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AmendRecallDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AmendedRecallView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Recalls_decide: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
                lotId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DecideLotDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DecidedLotView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Recalls_withdraw: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WithdrawRecallDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WithdrawnRecallView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Exposures_exposures: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description Only sessions of this client; left out: all. */
                clientId?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ExposurePageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Exposures_exposedClients: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
                /** @description Only clients who are this surely exposed; left out: all. */
                certainty?: "certain" | "possible";
            };
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ExposedClientPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Exposures_plannedSessions: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlannedSessionsView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Exposures_exposuresAsCsv: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Exposures_exposuresAsSpreadsheet: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet": string;
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Exposures_contactListAsCsv: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Exposures_recallsOfClient: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                clientId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClientRecallsView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    RecallContacts_listRecipients: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
                /** @description Left out: clients. */
                audience?: "client" | "artist" | "supplier" | "authority";
                /** @description True: only those whom nobody has reached yet, and who neither refused nor are unreachable. */
                outstanding?: true | false;
            };
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecipientPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    RecallContacts_prepareMessage: {
        parameters: {
            query?: {
                clientId?: string;
                artistId?: string;
                /** @description A supplier or an authority. */
                company?: string;
                /** @description Left out: a client. */
                audience?: "client" | "artist" | "supplier" | "authority";
                /** @description Left out: English. */
                language?: "en" | "de";
            };
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PreparedMessageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    RecallContacts_listContacts: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                clientId?: string;
                /** @description Left out: all. */
                audience?: "client" | "artist" | "supplier" | "authority";
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ContactPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    RecallContacts_recordContact: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RecordContactDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecordedContactView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    RecallContacts_showEffectiveness: {
        parameters: {
            query?: {
                /** @description Per cent of those to be told that level B was agreed to ask for, 11 to 99; left out: nothing was agreed. */
                agreedPercent?: number;
            };
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["EffectivenessView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Closing_ready: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadinessView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Closing_close: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CloseRecallDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClosingView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Report_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecallReportView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Report_print: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": string;
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Drills_list: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DrillPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Drills_open: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["OpenDrillDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OpenedDrillView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Drills_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecallStepsView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Drills_note: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NoteStepDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecallStepsView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Drills_schedule: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DrillScheduleView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Drills_setSchedule: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetDrillScheduleDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DrillScheduleView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Drills_setInChain: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetChainDrillScheduleDto"];
            };
        };
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChainDrillScheduleView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ChainProgress_studios: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
                recallId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChainProgressView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ChainProgress_own: {
        parameters: {
            query?: {
                /** @description First local day; left out: a year before the last. */
                from?: string;
                /** @description Last local day; left out: today. */
                through?: string;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecordQualityView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    ChainProgress_all: {
        parameters: {
            query?: {
                /** @description First local day; left out: a year before the last. */
                from?: string;
                /** @description Last local day; left out: today. */
                through?: string;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChainRecordQualityView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Backups_show: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: unknown;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BackupStatusView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Health_live: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LiveView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Health_ready: {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ReadyView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    AuditLog_page: {
        parameters: {
            query?: {
                /** @description Only entries about such things: `container`, `session`, `person`. */
                subjectKind?: string;
                /** @description Only entries about the thing with this id. */
                subjectId?: string;
                /** @description Only entries of this action, such as `stock.open`. */
                action?: string;
                /** @description Only what this person did. */
                personId?: string;
                /** @description Only what was recorded at this instant or later. */
                from?: string;
                /** @description Only what was recorded before this instant. */
                to?: string;
                /** @description Which end comes first; left out: the newest. */
                order?: "newest" | "oldest";
                /** @description How many at most, 1 to 200. */
                limit?: number;
                /** @description The `next` of the page before. */
                after?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["AuditPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    AuditLog_verify: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["VerificationView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    AuditLog_export: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/x-ndjson": string;
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Retention_list: {
        parameters: {
            query?: {
                /** @description The `next` of the page before. */
                after?: string;
                /** @description How many at most, 1 to 200. */
                limit?: number;
            };
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ClientRetentionPageView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
    Retention_carryOut: {
        parameters: {
            query?: never;
            header?: never;
            path: {
                studioId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CarryOutRetentionDto"];
            };
        };
        responses: {
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CarriedOutRetentionView"];
                };
            };
            /** @description Anything else */
            default: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/problem+json": components["schemas"]["Problem"];
                };
            };
        };
    };
}
