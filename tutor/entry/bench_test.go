package entry

import "testing"

// BenchmarkRead reads the cosine law with every number written out, and the
// plainest of entries.
func BenchmarkRead(b *testing.B) {
	for name, entry := range map[string]string{
		"number":     "682.6 N",
		"expression": "sqrt(340^2+610^2-2*340*610*cos(87))",
	} {
		b.Run(name, func(b *testing.B) {
			s := scopeFor("R")
			b.ReportAllocs()
			for b.Loop() {
				if _, err := Read(entry, s); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
