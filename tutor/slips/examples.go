package slips

// Example is a value that a slip of the catalogue gives, and the right one, at
// a problem of a kind's bank.
type Example struct {
	Kind         string    // its name
	Problem      int       // place in the kind's Bank, from 0
	Before       [2]string // quantity and entry that stand before it; empty where none need to
	Quantity     string    // its name
	Wrong, Right string    // entries
}

// Example returns the example of the slip; a zero one where it has none.
func (s *Slip) Example() Example { return examples[s.ID] }

// examples has one for each row. A row is named first at its wrong value
// and not at the right one.
var examples = map[string]Example{
	"included-for-interior":     {Kind: "particle-equilibrium", Problem: 0, Quantity: "phi1", Wrong: "200.00 deg", Right: "120.00 deg"},
	"complement-for-supplement": {Kind: "components", Problem: 3, Quantity: "theta", Wrong: "70.00 deg", Right: "160.00 deg"},
	"angles-not-halved":         {Kind: "two-forces", Problem: 0, Quantity: "gamma", Wrong: "174.00 deg", Right: "87.00 deg"},
	"bracket-lost":              {Kind: "two-forces", Problem: 0, Quantity: "alpha", Wrong: "156.17 deg", Right: "29.83 deg"},
	"directions-added":          {Kind: "two-forces", Problem: 0, Quantity: "phi", Wrong: "143.00 deg", Right: "93.00 deg"},
	"direction-for-angle":       {Kind: "two-forces", Problem: 0, Quantity: "phi", Wrong: "25.00 deg", Right: "93.00 deg"},
	"reflex-angle":              {Kind: "two-forces", Problem: 3, Quantity: "beta", Wrong: "319.55 deg", Right: "40.45 deg"},
	"negative-axis":             {Kind: "components", Problem: 0, Quantity: "alpha", Wrong: "155.00 deg", Right: "25.00 deg"},
	"other-axis":                {Kind: "components", Problem: 0, Quantity: "alpha", Wrong: "65.00 deg", Right: "25.00 deg"},
	"clockwise":                 {Kind: "components", Problem: 1, Quantity: "theta", Wrong: "143.13 deg", Right: "−143.13 deg"},
	"opposite-sense":            {Kind: "components", Problem: 0, Quantity: "alpha", Wrong: "205.00 deg", Right: "25.00 deg"},
	"other-force":               {Kind: "two-forces", Problem: 0, Quantity: "phi", Wrong: "0.00 deg", Right: "93.00 deg"},
	"right-triangle-assumed":    {Kind: "two-forces", Problem: 0, Quantity: "alpha", Wrong: "26.67 deg", Right: "29.83 deg"},
	"bisector-assumed":          {Kind: "two-forces", Problem: 0, Quantity: "alpha", Wrong: "46.50 deg", Right: "29.83 deg"},
	"minutes-as-decimals":       {Kind: "components", Problem: 1, Quantity: "alpha", Wrong: "36.52 deg", Right: "36.87 deg"},
	"cosine-sign":               {Kind: "missing-force", Problem: 3, Quantity: "R", Wrong: "613.8 N", Right: "707.3 N"},
	"two-missing":               {Kind: "two-forces", Problem: 0, Quantity: "gamma", Wrong: "133.50 deg", Right: "87.00 deg"},
	"root-missing":              {Kind: "components", Problem: 4, Quantity: "F", Wrong: "393100 N", Right: "627.0 N"},
	"squares-missing":           {Kind: "components", Problem: 4, Quantity: "F", Wrong: "15.33 N", Right: "627.0 N"},
	"one-square-missing":        {Kind: "components", Problem: 4, Quantity: "F", Wrong: "310.9 N", Right: "627.0 N"},
	"cross-term-missing":        {Kind: "two-forces", Problem: 0, Quantity: "R", Wrong: "698.4 N", Right: "682.6 N"},
	"sum-squared":               {Kind: "components", Problem: 4, Quantity: "F", Wrong: "235.0 N", Right: "627.0 N"},
	"root-split":                {Kind: "two-forces", Problem: 0, Quantity: "R", Wrong: "802.7 N", Right: "682.6 N"},
	"magnitudes-added":          {Kind: "concurrent-forces", Problem: 0, Quantity: "R", Wrong: "1280 N", Right: "421.6 N"},
	"magnitudes-subtracted":     {Kind: "two-forces", Problem: 0, Quantity: "R", Wrong: "270.0 N", Right: "682.6 N"},
	"precedence":                {Kind: "two-forces", Problem: 0, Quantity: "R", Wrong: "61.77 N", Right: "682.6 N"},
	"sine-cosine-swapped":       {Kind: "two-forces", Problem: 0, Quantity: "R", Wrong: "949.7 N", Right: "682.6 N"},
	"radian-mode":               {Kind: "components", Problem: 0, Quantity: "Fx", Wrong: "337.0 N", Right: "308.1 N"},
	"gradian-mode":              {Kind: "components", Problem: 0, Quantity: "Fx", Wrong: "314.1 N", Right: "308.1 N"},
	"inverse-missing":           {Kind: "components", Problem: 1, Quantity: "theta", Wrong: "−179.25 deg", Right: "−143.13 deg"},
	"ratio-inverted":            {Kind: "components", Problem: 4, Quantity: "F", Wrong: "0.001595 N", Right: "627.0 N"},
	"other-side":                {Kind: "two-forces", Problem: 0, Quantity: "alpha", Wrong: "33.82 deg", Right: "29.83 deg"},
	"tangent-taken":             {Kind: "components", Problem: 0, Quantity: "Fx", Wrong: "158.5 N", Right: "308.1 N"},
	"tangent-missed":            {Kind: "components", Problem: 5, Quantity: "alpha", Wrong: "45.10 deg", Right: "35.31 deg"},
	"sine-missing":              {Kind: "oblique-components", Problem: 0, Quantity: "Fu", Wrong: "309.0 N", Right: "416.3 N"},
	"legs-added":                {Kind: "components", Problem: 1, Quantity: "Fx", Wrong: "−3.714 kN", Right: "−5.200 kN"},
	"force-in-other-sum":        {Kind: "particle-equilibrium", Problem: 0, Quantity: "sumx", Wrong: "T2 cos 30 - T1 cos 40 - W = 0", Right: "T2 cos 30 - T1 cos 40 = 0"},
	"obtuse-missed":             {Kind: "missing-force", Problem: 3, Quantity: "gamma", Wrong: "81.67 deg", Right: "98.33 deg"},
	"obtuse-assumed":            {Kind: "two-forces", Problem: 0, Quantity: "beta", Wrong: "116.83 deg", Right: "63.17 deg"},
	"quadrant-missed":           {Kind: "components", Problem: 1, Quantity: "theta", Wrong: "36.87 deg", Right: "−143.13 deg"},
	"reference-angle":           {Kind: "components", Problem: 1, Quantity: "theta", Wrong: "36.87 deg", Right: "−143.13 deg"},
	"reference-missing":         {Kind: "two-forces", Problem: 0, Quantity: "theta", Wrong: "63.17 deg", Right: "88.17 deg"},
	"wrong-side":                {Kind: "two-forces", Problem: 0, Quantity: "theta", Wrong: "−38.17 deg", Right: "88.17 deg"},
	"wrong-neighbour":           {Kind: "two-forces", Problem: 0, Quantity: "theta", Wrong: "54.83 deg", Right: "88.17 deg"},
	"sign-lost":                 {Kind: "components", Problem: 4, Quantity: "theta", Wrong: "−119.63 deg", Right: "119.63 deg"},
	"term-missing":              {Kind: "two-forces", Problem: 0, Quantity: "Rx", Wrong: "−286.4 N", Right: "21.77 N"},
	"magnitudes-for-components": {Kind: "components", Problem: 0, Quantity: "Fx", Wrong: "340.0 N", Right: "308.1 N"},
	"slope-inverted":            {Kind: "concurrent-forces", Problem: 1, Quantity: "F2x", Wrong: "−0.7308 kN", Right: "−1.754 kN"},
	"part-in-other-sum":         {Kind: "concurrent-forces", Problem: 0, Quantity: "Ry", Wrong: "232.6 N", Right: "−18.39 N"},
	"leg-over-leg":              {Kind: "components", Problem: 1, Quantity: "Fx", Wrong: "−8.667 kN", Right: "−5.200 kN"},
	"known-added":               {Kind: "missing-force", Problem: 0, Quantity: "F2x", Wrong: "499.7 N", Right: "−116.6 N"},
	"perpendicular-to-given":    {Kind: "missing-force", Problem: 2, Quantity: "theta2", Wrong: "−25.00 deg", Right: "−70.00 deg"},
	"axes-for-components":       {Kind: "oblique-components", Problem: 5, Quantity: "phi", Wrong: "65.00 deg", Right: "115.00 deg"},
	"components-added":          {Kind: "components", Problem: 4, Quantity: "F", Wrong: "855.0 N", Right: "627.0 N"},
	"minus-outside-square":      {Kind: "components", Problem: 4, Quantity: "F", Wrong: "448.2 N", Right: "627.0 N"},
	"squares-subtracted":        {Kind: "components", Problem: 4, Quantity: "F", Wrong: "448.2 N", Right: "627.0 N"},
	"other-diagonal":            {Kind: "two-forces", Problem: 0, Quantity: "R", Wrong: "713.7 N", Right: "682.6 N"},
	"resultant-reversed":        {Kind: "two-forces", Problem: 0, Quantity: "theta", Wrong: "−91.83 deg", Right: "88.17 deg"},
	"mass-for-weight":           {Kind: "particle-equilibrium", Problem: 0, Quantity: "F3", Wrong: "120.0 N", Right: "1177 N"},
	"gravity-twice":             {Kind: "particle-equilibrium", Problem: 0, Quantity: "F1", Wrong: "10640 N", Right: "1085 N"},
	"gravity-other":             {Kind: "particle-equilibrium", Problem: 0, Quantity: "F3", Wrong: "3864 N", Right: "1177 N"},
	"gravity-inverted":          {Kind: "particle-equilibrium", Problem: 0, Quantity: "F3", Wrong: "12.23 N", Right: "1177 N"},
	"tension-doubled":           {Kind: "particle-equilibrium", Problem: 5, Quantity: "F2", Wrong: "882.9 N", Right: "441.5 N"},
	"tension-halved":            {Kind: "particle-equilibrium", Problem: 5, Quantity: "F2", Wrong: "220.7 N", Right: "441.5 N"},
	"spring-multiplied":         {Kind: "particle-equilibrium", Problem: 4, Quantity: "s2", Wrong: "2960000 m", Right: "0.1850 m"},
	"sense-reversed":            {Kind: "particle-equilibrium", Problem: 0, Quantity: "F1", Wrong: "−5871 N", Right: "1085 N"},
	"shared-equally":            {Kind: "particle-equilibrium", Problem: 0, Quantity: "F1", Wrong: "588.6 N", Right: "1085 N"},
	"load-resolved":             {Kind: "particle-equilibrium", Problem: 0, Quantity: "F1", Wrong: "756.7 N", Right: "1085 N"},
	"prefix":                    {Kind: "components", Problem: 0, Quantity: "Fx", Wrong: "0.3081 N", Right: "308.1 N"},
	"unit-system":               {Kind: "components", Problem: 0, Quantity: "Fx", Wrong: "69.27 N", Right: "308.1 N"},
	"radians-unnamed":           {Kind: "two-forces", Problem: 0, Quantity: "gamma", Wrong: "1.518", Right: "87.00 deg"},
	"decimal-place":             {Kind: "components", Problem: 0, Quantity: "alpha", Wrong: "2.50 deg", Right: "25.00 deg"},
	"digits-swapped":            {Kind: "components", Problem: 0, Quantity: "alpha", Wrong: "20.50 deg", Right: "25.00 deg"},
	"given-miscopied":           {Kind: "components", Problem: 0, Quantity: "alpha", Wrong: "225.00 deg", Right: "25.00 deg"},
	"branches-mixed":            {Kind: "missing-force", Problem: 3, Before: [2]string{"R", "707.3 N"}, Quantity: "theta2", Wrong: "−133.3 deg", Right: "−46.67 deg"},
}
