package figure
func describeGiven(forces []Force) string { return "" }
func describeParallelogram(p Pair) string { return "" }
func describeTriangle(p Pair) string { return "" }
func describeRectangular(f Force, x, y Label) string { return "" }
func describePolygon(f []Force, x Label) string { return "" }
