package sets_test

import (
	"fmt"

	"closingside/tutor/lesson"
	"closingside/tutor/sets"
)

// Every student gets numbers of her own, and the same ones again for the same id.
func Example() {
	s, err := sets.Read(lesson.Branch("",
		lesson.Leaf("title", "Mooring lines"),
		lesson.Leaf("numbers", "own"),
		lesson.Branch("problems", lesson.Branch("", lesson.Leaf("generate", "two-forces")))))
	if err != nil {
		fmt.Println(err)
		return
	}
	var codes []string
	for _, student := range []string{"S 1042", "s1042", "S 1043"} {
		v, err := s.Variant(student)
		if err != nil {
			fmt.Println(err)
			return
		}
		codes = append(codes, v.Tasks[0].Problem.Code())
		fmt.Println(v.Student, "has the first one's numbers:", codes[len(codes)-1] == codes[0])
	}
	again, student, err := sets.Decode(s.Code("S 1042"))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(again.Title, student)
	// Output:
	// s1042 has the first one's numbers: true
	// s1042 has the first one's numbers: true
	// s1043 has the first one's numbers: false
	// Mooring lines s1042
}
