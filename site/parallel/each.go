package parallel

import (
	"runtime"
	"sync"
)

// Each returns what one makes of each number below n, and the error it makes it
// with, in order. It tells progress after each, never twice at once; progress may
// be nil.
func Each[T any](n int, one func(i int) (T, error), progress func(done, all int)) (made []T, faults []error) {
	made, faults = make([]T, n), make([]error, n)
	jobs := make(chan int)
	var wait sync.WaitGroup
	var lock sync.Mutex
	done := 0
	for range min(n, runtime.GOMAXPROCS(0)) {
		wait.Go(func() {
			for i := range jobs {
				made[i], faults[i] = one(i)
				if progress == nil {
					continue
				}
				lock.Lock()
				done++
				progress(done, n)
				lock.Unlock()
			}
		})
	}
	for i := range n {
		jobs <- i
	}
	close(jobs)
	wait.Wait()
	return made, faults
}
