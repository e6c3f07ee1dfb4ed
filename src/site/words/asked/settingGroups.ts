/** Groups of columns in the table of settings that can be asked, and what they are called. */
export const SETTING_GROUPS = [
  { id: "moment", name: "Raise" },
  { id: "large", name: "Large end asks" },
  { id: "small", name: "Small end asks" },
  { id: "start", name: "Set to start with" },
  { id: "bearings", name: "At the bearings" },
] as const;
export type SettingGroup = (typeof SETTING_GROUPS)[number]["id"];
