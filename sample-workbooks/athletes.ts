/** Who plays for Fjordvik HK. Club and athletes are invented: the surnames are words for weather, sea and wood. */
export type Role = "Goalkeeper" | "Wing" | "Back" | "Pivot";
export type Team = "Seniors" | "Under-18";

export type Athlete = { readonly name: string; readonly role: Role };

export const seniors: readonly Athlete[] = [
  { name: "Aelvi Drivved", role: "Goalkeeper" },
  { name: "Brynka Nordavind", role: "Goalkeeper" },
  { name: "Dagnja Stillevann", role: "Goalkeeper" },
  { name: "Eldvi Morgendis", role: "Wing" },
  { name: "Embrit Blåknapp", role: "Wing" },
  { name: "Fjorna Tyttebær", role: "Wing" },
  { name: "Gudvi Solgangsbris", role: "Wing" },
  { name: "Havdisa Lyngsti", role: "Wing" },
  { name: "Hjerda Måkeskrik", role: "Wing" },
  { name: "Ingvja Nattfrost", role: "Wing" },
  { name: "Jorvei Regnbøye", role: "Back" },
  { name: "Kaivi Rognebær", role: "Back" },
  { name: "Livka Saltsprut", role: "Back" },
  { name: "Marvi Skumring", role: "Back" },
  { name: "Nornea Snøfonn", role: "Back" },
  { name: "Oddla Steinsprang", role: "Back" },
  { name: "Ragnvi Tåkelur", role: "Back" },
  { name: "Runjal Vindkast", role: "Back" },
  { name: "Sivje Fjærestein", role: "Back" },
  { name: "Solunna Havblikk", role: "Back" },
  { name: "Sunnvi Isranke", role: "Back" },
  { name: "Torvei Bjørnemose", role: "Pivot" },
  { name: "Tyrin Kveldsol", role: "Pivot" },
  { name: "Unnika Furukongle", role: "Pivot" },
  { name: "Vårinja Gullregn", role: "Pivot" },
  { name: "Ylvana Kvistebu", role: "Pivot" },
];

export const juniors: readonly Athlete[] = [
  { name: "Alvja Frostbær", role: "Goalkeeper" },
  { name: "Birgja Solstripe", role: "Goalkeeper" },
  { name: "Dalvi Strandkål", role: "Wing" },
  { name: "Eirlin Måneskinn", role: "Wing" },
  { name: "Fanvei Tindeskar", role: "Wing" },
  { name: "Gunja Skogsnipe", role: "Wing" },
  { name: "Helvi Røsslyng", role: "Wing" },
  { name: "Idvei Bølgetopp", role: "Back" },
  { name: "Jarnei Kvitveis", role: "Back" },
  { name: "Krisvi Fjellsmelle", role: "Back" },
  { name: "Lunja Sommerregn", role: "Back" },
  { name: "Mirvei Tangvoll", role: "Back" },
  { name: "Nelvi Blåskjell", role: "Back" },
  { name: "Olvei Granbar", role: "Back" },
  { name: "Rølja Havgule", role: "Back" },
  { name: "Sjønne Stjernedryss", role: "Pivot" },
  { name: "Tuvja Myrull", role: "Pivot" },
  { name: "Ørnja Vintergrønn", role: "Pivot" },
];
