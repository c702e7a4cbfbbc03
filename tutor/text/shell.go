package text

// shell holds what the page says around the engine's screens: before the
// engine arrives, when it does not, and about what is kept on the device.
var shell = map[string]string{
	"shell.title":           "closingside: how forces add",
	"shell.description":     "Practise adding forces, step by step, with every value you write checked. Works without a network.",
	"shell.purpose":         "How forces add, one value at a time",
	"shell.skip":            "Skip to the problem",
	"shell.loading":         "Getting the checker ready. You can choose a problem already.",
	"shell.opening":         "Opening what you left or were sent.",
	"shell.no-script":       "This page checks your values with a program that runs on your own device, and JavaScript is switched off. Allow JavaScript for this page in your browser’s settings, then load it again.",
	"shell.engine-failed":   "The checker did not start. What you wrote is kept. Check the network, then try again; if it stays like this, a newer browser may help: the page needs WebAssembly.",
	"shell.try-again":       "Try again",
	"shell.no-store":        "This browser keeps nothing for this page (a private window, or storage switched off). You can work as usual; save a copy of your work before you close the page.",
	"shell.full":            "The device has no room left, so your latest work is only on this page. You can go on; free some space, or save a copy before you close the page.",
	"shell.set-aside":       "The checker stopped at one of your entries and was started again. That entry was set aside; everything else is back.",
	"shell.cleared":         "Your work was erased from this device.",
	"shell.update":          "A newer version of this page is ready. It starts the next time you open the page.",
	"shell.update-now":      "Start it now",
	"shell.safety-title":    "Safety",
	"shell.work-title":      "Your work on this device",
	"shell.work":            "Everything you enter stays on this device. Nothing is sent anywhere.",
	"shell.export":          "Save a copy",
	"shell.clear":           "Erase everything",
	"shell.clear-sure":      "This erases every problem, entry and hint on this device. It cannot be undone.",
	"shell.clear-now":       "Yes, erase it",
	"shell.offline-title":   "Network",
	"shell.offline-waiting": "Needed until this page is kept on the device.",
	"shell.offline-ready":   "Not needed any more: this page works without it.",
	"shell.offline-failed":  "Needed: this browser could not keep the page.",
	"shell.version":         "Version",
	"shell.short-name":      "closingside",
}
